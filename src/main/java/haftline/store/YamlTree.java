package haftline.store;

import haftline.measure.Quote;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * From YAML text to a tree of nodes with their places, within limits on depth and on aliases, so
 * that no document costs more than it has letters.
 */
final class YamlTree {
    /** Our deepest document has eight levels. */
    static final int DEEPEST = 32;

    /** Few enough that repeating whole collections cannot blow a document up. */
    static final int MOST_ALIASES = 20;

    private YamlTree() {}

    /** The map that a text consists of; where it is none, that is told. */
    static Optional<MappingNode> of(String text, Problems problems) {
        LoadSettings settings = settings(problems.file(), false);
        try {
            // The composer calls itself once a level: the depth is checked first, without it.
            if (!withinLimits(text, settings, problems)) {
                return Optional.empty();
            }
            Optional<Node> root = new Compose(settings).composeString(text);
            if (root.isPresent() && root.get() instanceof MappingNode map) {
                return Optional.of(map);
            }
            problems.add(
                    1,
                    1,
                    "",
                    root.isEmpty()
                            ? "the document is empty, expected haftline: 1 and a kind"
                            : "found a document that is no map, expected haftline: 1 and a kind");
        } catch (MarkedYamlEngineException e) {
            tell(e, text, problems);
        } catch (ReaderException e) {
            tell(e, text, problems);
        } catch (YamlEngineException e) {
            problems.addToFile("is not YAML: " + Quote.plain(String.valueOf(e.getMessage())));
        }
        return Optional.empty();
    }

    static LoadSettings settings(String label, boolean comments) {
        return LoadSettings.builder()
                .setLabel(label)
                .setSchema(new CoreSchema())
                .setParseComments(comments)
                .setCodePointLimit(SourceText.LARGEST_BYTES)
                // Doubled keys are told by the readers, who know both places.
                .setAllowDuplicateKeys(true)
                .setMaxAliasesForCollections(MOST_ALIASES)
                .build();
    }

    private static boolean withinLimits(String text, LoadSettings settings, Problems problems) {
        int depth = 0;
        int aliases = 0;
        for (Event event : new Parse(settings).parseString(text)) {
            switch (event.getEventId()) {
                case MappingStart, SequenceStart -> depth++;
                case MappingEnd, SequenceEnd -> depth--;
                case Alias -> aliases++;
                default -> {}
            }
            if (depth > DEEPEST) {
                problems.add(
                        event.getStartMark(),
                        "",
                        "nested more than " + DEEPEST + " levels deep, which no document needs");
                return false;
            }
            if (aliases > MOST_ALIASES) {
                problems.add(
                        event.getStartMark(),
                        "",
                        "more than " + MOST_ALIASES + " aliases (*), expected few or none");
                return false;
            }
            if (event instanceof ScalarEvent scalar
                    && scalar.isPlain()
                    && scalar.getValue().equals("<<")) {
                problems.add(
                        event.getStartMark(),
                        "",
                        "found a merge key (<<), which YAML 1.2 does not have");
                return false;
            }
            if (hasOwnTag(event)) {
                problems.add(event.getStartMark(), "", "found a tag (!), expected a plain value");
                return false;
            }
        }
        return true;
    }

    private static boolean hasOwnTag(Event event) {
        if (event instanceof ScalarEvent scalar) {
            // A lone "!" asks for a text, as quotes do.
            return scalar.getTag().filter(tag -> !tag.equals("!")).isPresent();
        }
        return event instanceof CollectionStartEvent collection && collection.getTag().isPresent();
    }

    private static void tell(MarkedYamlEngineException e, String text, Problems problems) {
        String problem = String.valueOf(e.getProblem());
        String message;
        if (problem.contains("TAB")) {
            message = "found a tab, expected blanks: YAML is indented with blanks only";
        } else if (problem.contains("expected a single document")
                || String.valueOf(e.getContext()).contains("expected a single document")) {
            message = "found a second document (---) in this file, expected one";
        } else if (problem.contains("undefined alias")) {
            message = "found an alias (*) of something that is not there before it";
        } else {
            if (problem.contains("could not find expected ':'")) {
                problems.add(
                        e.getContextMark().or(e::getProblemMark),
                        "",
                        "not YAML: found a key without a colon behind it");
                return;
            }
            String context = e.getContext() == null ? "" : e.getContext() + ": ";
            message = "not YAML: " + oneLine(context + problem) + unclosed(e, text);
        }
        problems.add(e.getProblemMark().or(e::getContextMark), "", message);
    }

    /** Where what is not closed was opened, and whether a remark may have taken its end. */
    private static String unclosed(MarkedYamlEngineException e, String text) {
        boolean isFlow = String.valueOf(e.getContext()).contains("flow");
        if (!isFlow || e.getContextMark().isEmpty()) {
            return "";
        }
        int line = e.getContextMark().get().getLine();
        String opened = text.lines().skip(line).findFirst().orElse("");
        return "; it was opened on line "
                + (line + 1)
                + (opened.contains(" #")
                        ? ", where # begins a remark: such a name stands in quotation marks, \"#7\""
                        : "");
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static void tell(ReaderException e, String text, Problems problems) {
        // The engine gives a position in code points of the text.
        int end =
                text.offsetByCodePoints(
                        0, Math.min(e.getPosition(), text.codePointCount(0, text.length())));
        int line = 1 + (int) text.substring(0, end).chars().filter(c -> c == '\n').count();
        int start = text.lastIndexOf('\n', Math.max(0, end - 1)) + 1;
        problems.add(
                line,
                Math.max(0, text.codePointCount(Math.min(start, end), end)) + 1,
                "",
                String.format(
                        java.util.Locale.ROOT,
                        "found the character U+%04X, which no YAML text may hold",
                        e.getCodePoint()));
    }
}
