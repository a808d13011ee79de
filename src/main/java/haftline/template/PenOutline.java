package haftline.template;

import java.util.ArrayList;
import java.util.List;

/**
 * Outlines of what a round pen writes: every place half its width from the strokes, exactly but for
 * strokes too short to follow.
 */
final class PenOutline {
    private PenOutline() {}

    static List<Loop> of(Lettering lettering, double penMm) {
        List<Loop> loops = new ArrayList<>();
        for (List<List<Stroke>> glyph : StrokeFont.glyphs(lettering)) {
            List<Stroke> source = new ArrayList<>();
            List<Stroke> raw = new ArrayList<>();
            for (List<Stroke> chain : glyph) {
                source.addAll(chain);
                addRound(raw, chain, penMm / 2);
            }
            OffsetTrim.loops(raw, source, penMm / 2)
                    .forEach(loop -> loops.add(ShortStrokes.joined(loop)));
        }
        return loops;
    }

    /** Both sides of a chain, and round caps where it is open. */
    private static void addRound(List<Stroke> raw, List<Stroke> chain, double half) {
        List<Stroke> back = new ArrayList<>();
        for (int i = chain.size() - 1; i >= 0; i--) {
            back.add(chain.get(i).reversed());
        }
        Stroke last = chain.get(chain.size() - 1);
        boolean closed = last.end().equals(chain.get(0).start());
        raw.addAll(LoopOffset.raw(chain, half, closed));
        raw.addAll(LoopOffset.raw(back, half, closed));
        if (!closed) {
            addCap(raw, last, half);
            addCap(raw, back.get(back.size() - 1), half);
        }
    }

    private static void addCap(List<Stroke> raw, Stroke last, double half) {
        double quarter = Math.PI / 2;
        raw.add(Stroke.arc(last.end(), half, last.endRad() - quarter, quarter));
        raw.add(Stroke.arc(last.end(), half, last.endRad(), quarter));
    }
}
