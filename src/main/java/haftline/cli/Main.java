package haftline.cli;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /**
     * Runs the command line.
     *
     * @param args the words typed after the program's name
     */
    public static void main(String[] args) {
        System.out.println("haftline");
    }
}
