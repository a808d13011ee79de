package haftline.ui.board;

import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.figures.Walls;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.Handle;
import haftline.parts.EndCap;
import haftline.parts.Kit;
import java.util.Arrays;
import java.util.List;

/** A handle read off at even steps along the axis; index i stands at {@code x(i)}. */
final class Columns {
    /** Marks a column where there is no wall to speak of. */
    static final float NO_WALL = Float.MAX_VALUE;

    /** Wall left over its limit from which on it is called ample, mm (for colour only). */
    private static final float AMPLE = 0.5f;

    private static final float FINE = 16;
    private static final float FINE_SLOPE = 128;
    private static final float END_SLOPE = -3;

    final int count;
    final float startX;
    final float step;

    /** Radius of the wood, tenon included; 0 beside it. */
    final float[] wood;

    /** dr/dx of the wood. */
    final float[] slope;

    /** Radius of the ferrule or cap outside; 0 beside them. */
    final float[] metal;

    /** Radius of the holes; 0 where there is none. */
    final float[] bore;

    /** Radius of tang or spigot; 0 beside them. */
    final float[] shank;

    /** Wall at the worst wander, mm. */
    final float[] worst;

    /** Wall without wander, mm. */
    final float[] nominal;

    /** Limit of the wall, mm. */
    final float[] limit;

    Columns(Handle handle, double startX, double step, int count) {
        this.count = count;
        this.startX = (float) startX;
        this.step = (float) step;
        wood = new float[count];
        slope = new float[count];
        metal = new float[count];
        bore = new float[count];
        shank = new float[count];
        worst = new float[count];
        nominal = new float[count];
        limit = new float[count];
        Arrays.fill(worst, NO_WALL);
        Arrays.fill(nominal, NO_WALL);
        readWood(handle.outline());
        readMetal(handle);
        readBores(handle);
    }

    float x(int i) {
        return startX + i * step;
    }

    /** The first column at or behind a place, within the range. */
    int at(double x) {
        return (int) Math.max(0, Math.min(count, Math.ceil((x - startX) / step)));
    }

    /**
     * What each column looks like, as a number; a radius that differs by less than a sixteenth of a
     * pixel looks the same.
     *
     * @param setting all that is the same for the whole row
     */
    long[] looks(long setting) {
        long[] looks = new long[count];
        float fine = FINE / step;
        for (int i = 0; i < count; i++) {
            long d = Mark.mixed(setting, Math.round(wood[i] * fine));
            d = Mark.mixed(d, Math.round(slope[i] * FINE_SLOPE));
            d = Mark.mixed(d, Math.round(metal[i] * fine));
            d = Mark.mixed(d, Math.round(bore[i] * fine));
            d = Mark.mixed(d, Math.round(shank[i] * fine));
            looks[i] = Mark.mixed(d, wall(i));
        }
        return looks;
    }

    /** How the cap's outside falls; steeply at its end. */
    float metalSlope(int i) {
        if (i + 1 >= count || metal[i + 1] <= 0) {
            return END_SLOPE;
        }
        return (metal[i + 1] - metal[i]) / step;
    }

    /** 0 broken, 1 close, 2 ample, -1 where no bore lies under the wood. */
    int wall(int i) {
        if (worst[i] == NO_WALL) {
            return -1;
        }
        float margin = worst[i] - limit[i];
        return margin < 0 ? 0 : margin < AMPLE ? 1 : 2;
    }

    private void readWood(Outline outline) {
        List<Segment> segments = outline.segments();
        for (Segment segment : segments) {
            int to = at(segment.endX());
            for (int i = at(segment.startX()); i < to; i++) {
                double x = Math.min(segment.endX(), Math.max(segment.startX(), x(i)));
                wood[i] = (float) segment.r(x);
                double dr = segment.slope(x);
                slope[i] = Double.isFinite(dr) ? (float) dr : -20;
            }
        }
    }

    private void readMetal(Handle handle) {
        Kit kit = handle.brief().kit();
        float ferrule = (float) kit.ferrule().outside().mean() / 2;
        Arrays.fill(metal, at(handle.ferruleFaceX()), at(0), ferrule);
        double seat = handle.fit().seatX();
        double tip = handle.fit().tipX();
        for (int i = at(seat); i < at(tip); i++) {
            shank[i] = (float) kit.tang().envelopeMm(x(i) - seat) / 2;
        }
        kit.cap().ifPresent(cap -> readCap(handle, cap));
    }

    private void readCap(Handle handle, EndCap cap) {
        double butt = handle.buttX();
        double head = cap.headThickness().mean();
        double radius = cap.headDiameter().mean() / 2;
        for (int i = at(butt); i < at(butt + head); i++) {
            double t = (x(i) - butt) / head;
            metal[i] =
                    (float)
                            (cap.form() == EndCap.Form.DOMED
                                    ? radius * Math.sqrt(Math.max(0, 1 - t * t))
                                    : radius);
        }
        Arrays.fill(
                shank,
                at(butt - cap.spigotLength().mean()),
                at(butt),
                (float) cap.spigotDiameter().mean() / 2);
    }

    private void readBores(Handle handle) {
        readBore(
                handle,
                handle.tangBore(),
                Walls.limitMm(handle, Zone.TENON),
                Walls.limitMm(handle, Zone.BODY));
        double cap = Walls.limitMm(handle, Zone.CAP);
        handle.capBore().ifPresent(bore -> readBore(handle, bore, cap, cap));
    }

    private void readBore(Handle handle, Bore made, double tenonLimit, double bodyLimit) {
        double tip = made.xAt(made.reachMm());
        int from = at(Math.min(made.faceX(), tip));
        int to = at(Math.max(made.faceX(), tip));
        for (int i = from; i < to; i++) {
            float radius = (float) made.radiusAt(x(i));
            bore[i] = Math.max(bore[i], radius);
            if (wood[i] > 0 && radius > 0) {
                float thick = wood[i] - radius;
                float thin = thick - (float) handle.wander().at(made.depthAt(x(i)));
                nominal[i] = Math.min(nominal[i], thick);
                worst[i] = Math.min(worst[i], thin);
                limit[i] = (float) (x(i) < 0 ? tenonLimit : bodyLimit);
            }
        }
    }
}
