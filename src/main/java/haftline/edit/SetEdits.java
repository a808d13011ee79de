package haftline.edit;

/** Changes of what is said of the set as a whole. */
public final class SetEdits {
    private SetEdits() {}

    /**
     * Gives the set another name. Its file keeps its own.
     *
     * @param newName what the maker calls it
     * @return the command
     */
    public static Command rename(String newName) {
        return new Command(
                "rename the set", draft -> draft.withSet(draft.set().withName(newName.strip())));
    }
}
