package haftline.cli;

import haftline.findings.Gravity;

/**
 * Emphasis on a terminal. It never carries a meaning alone: every coloured mark has a shape and a
 * word beside it, so that plain ink loses nothing.
 */
enum Ink {
    /** No emphasis: files, pipes, terminals that know none. */
    PLAIN {
        @Override
        String in(String code, String text) {
            return text;
        }
    },
    /** ECMA-48 select graphic rendition. */
    ANSI {
        @Override
        String in(String code, String text) {
            return text.isEmpty() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
        }
    };

    private static final String BOLD = "1";
    private static final String FAINT = "2";
    private static final String BOLD_RED = "1;31";
    private static final String BOLD_YELLOW = "1;33";

    abstract String in(String code, String text);

    String strong(String text) {
        return in(BOLD, text);
    }

    String faint(String text) {
        return in(FAINT, text);
    }

    String grave(Gravity gravity, String text) {
        return switch (gravity) {
            case STOP -> in(BOLD_RED, text);
            case WARN -> in(BOLD_YELLOW, text);
            case NOTE -> faint(text);
        };
    }

    /**
     * The ink for the standard output: emphasis only on a terminal that knows it and whose user has
     * not set NO_COLOR to anything.
     */
    static Ink ofTerminal() {
        String noColour = System.getenv("NO_COLOR");
        boolean refused = noColour != null && !noColour.isEmpty();
        boolean dumb = "dumb".equals(System.getenv("TERM"));
        return System.console() == null || refused || dumb ? PLAIN : ANSI;
    }
}
