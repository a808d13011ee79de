package haftline.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The steps of a document, without limit. A gesture (a drag, a held key) may pass through many
 * states and is one step, or none where it ends as it began.
 *
 * <p>Not safe for several threads at once.
 *
 * @param <S> an immutable state with equality by content
 */
public final class History<S> {
    private static final int NOWHERE = -1;

    /** A state, and the name of the step that led to it. */
    private record Step<S>(String name, S state) {}

    private final List<Step<S>> steps = new ArrayList<>();
    private int position;
    private int saved;
    private Step<S> gesture;

    /**
     * A history of one state, which counts as saved.
     *
     * @param first the state
     */
    public History(S first) {
        steps.add(new Step<>("", first));
    }

    /**
     * The state now, in the middle of a gesture too.
     *
     * @return the state
     */
    public S state() {
        return gesture == null ? committed() : gesture.state();
    }

    /**
     * The state at the last whole step: where a gesture that is under way began.
     *
     * @return the state
     */
    public S committed() {
        return steps.get(position).state();
    }

    /**
     * One step. A gesture under way ends before it.
     *
     * @param name what was done
     * @param state the state after it
     * @return whether a step was added: a state equal to the one before adds none
     */
    public boolean step(String name, S state) {
        end();
        return add(new Step<>(name, state));
    }

    /**
     * Begins a gesture; one that is under way ends before it.
     *
     * @param name what is being done
     */
    public void begin(String name) {
        end();
        gesture = new Step<>(name, committed());
    }

    /**
     * Puts the gesture under way in another state.
     *
     * @param state the state
     * @throws IllegalStateException where none is under way
     */
    public void carryOn(S state) {
        if (gesture == null) {
            throw new IllegalStateException("no gesture is under way");
        }
        gesture = new Step<>(gesture.name(), state);
    }

    /**
     * Ends the gesture under way, if any.
     *
     * @return whether it made a step
     */
    public boolean end() {
        Step<S> ended = gesture;
        gesture = null;
        return ended != null && add(ended);
    }

    /** Gives the gesture under way up: the state is as before it. */
    public void cancel() {
        gesture = null;
    }

    /**
     * Whether a gesture is under way.
     *
     * @return true between {@link #begin} and {@link #end}
     */
    public boolean isInGesture() {
        return gesture != null;
    }

    private boolean add(Step<S> step) {
        if (step.state().equals(committed())) {
            return false;
        }
        steps.subList(position + 1, steps.size()).clear();
        if (saved > position) {
            saved = NOWHERE;
        }
        steps.add(step);
        position++;
        return true;
    }

    /**
     * Goes one step back. A gesture under way ends first, and is the step that is undone.
     *
     * @return whether there was one
     */
    public boolean undo() {
        end();
        if (position == 0) {
            return false;
        }
        position--;
        return true;
    }

    /**
     * Goes one step forward again.
     *
     * @return whether there was one
     */
    public boolean redo() {
        end();
        if (position == steps.size() - 1) {
            return false;
        }
        position++;
        return true;
    }

    /**
     * Name of the step that {@link #undo} takes back.
     *
     * @return the name, or empty at the first state
     */
    public Optional<String> undoName() {
        if (gesture != null) {
            return Optional.of(gesture.name());
        }
        return position == 0 ? Optional.empty() : Optional.of(steps.get(position).name());
    }

    /**
     * Name of the step that {@link #redo} does again.
     *
     * @return the name, or empty at the last state
     */
    public Optional<String> redoName() {
        return gesture != null || position == steps.size() - 1
                ? Optional.empty()
                : Optional.of(steps.get(position + 1).name());
    }

    /** The state now is what stands on the disk. */
    public void markSaved() {
        end();
        saved = position;
    }

    /** No state of the history stands on the disk. */
    public void markUnsaved() {
        saved = NOWHERE;
    }

    /**
     * Whether the state now differs from what stands on the disk.
     *
     * @return true where there is something to save
     */
    public boolean isModified() {
        boolean moved = gesture != null && !gesture.state().equals(committed());
        return moved || position != saved;
    }
}
