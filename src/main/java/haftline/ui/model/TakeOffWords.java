package haftline.ui.model;

import haftline.adjust.takeoff.Residual;
import haftline.adjust.takeoff.TakeOff;
import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.List;

/** What was taken off, in plain words. */
public final class TakeOffWords {
    private final LengthText lengths;

    /**
     * Words with lengths in a unit.
     *
     * @param units the unit
     */
    public TakeOffWords(Units units) {
        lengths = new LengthText(units);
    }

    /**
     * What was found and how well it fits.
     *
     * @param taken what was taken off
     * @return a few sentences
     */
    public String found(TakeOff taken) {
        List<String> details = taken.shape().details().stream().map(Detail::kind).toList();
        int nodes = taken.shape().nodes().size();
        Residual greatest = taken.greatest();
        return taken.residuals().size()
                + " readings over "
                + lengths.contour(taken.woodMm())
                + " "
                + lengths.unit()
                + ": "
                + nodes
                + (nodes == 1 ? " node" : " nodes")
                + (details.isEmpty() ? "" : ", " + String.join(", ", details))
                + ". The line misses them by "
                + lengths.difference(taken.rmsMm())
                + " "
                + lengths.unit()
                + " (root mean square, on the diameter), at most by "
                + lengths.difference(Math.abs(greatest.mm()))
                + " "
                + lengths.unit()
                + ", at "
                + lengths.contour(greatest.x())
                + " "
                + lengths.unit()
                + "."
                + (taken.cutShort()
                        ? " There were so many corners that not every shape could be tried: trace"
                                + " the handle alone, with fewer."
                        : "");
    }

    /**
     * Readings that were left out.
     *
     * @param taken what was taken off
     * @return a sentence for each
     */
    public List<String> strays(TakeOff taken) {
        List<String> strays = new ArrayList<>();
        for (Residual stray : taken.strays()) {
            int line = stray.reading().line();
            strays.add(
                    (line > 0 ? "Line " + line + ", at " : "At ")
                            + lengths.contour(stray.x())
                            + " "
                            + lengths.unit()
                            + ": "
                            + lengths.difference(stray.reading().diameterMm())
                            + " is "
                            + lengths.difference(Math.abs(stray.mm()))
                            + (stray.mm() > 0 ? " over" : " under")
                            + " the line. Left out; measure it again.");
        }
        return strays;
    }
}
