package haftline.store;

import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Lays a document out as a hand would write it, and puts the old text's comments back. */
final class TreeWriter {
    private static final int WIDTH = 100;
    private static final int INDENT = 2;

    private final OldText old;
    private final StringBuilder out = new StringBuilder();

    private TreeWriter(OldText old) {
        this.old = old;
    }

    static String write(Tree.Fields document, OldText old) {
        TreeWriter writer = new TreeWriter(old);
        Set<String> paths = new HashSet<>();
        writer.collect(document, "", paths);
        old.settleOn(paths);
        writer.fields(document, "", 0, "");
        old.foot().forEach(line -> writer.line(line));
        return writer.out.toString();
    }

    /** All paths that will be written. */
    private void collect(Tree tree, String path, Set<String> paths) {
        paths.add(path);
        if (tree instanceof Tree.Rows rows) {
            rename(rows, path);
        }
        for (Map.Entry<String, Tree> child : children(tree, path)) {
            collect(child.getValue(), OldText.path(path, child.getKey()), paths);
        }
    }

    private void rename(Tree.Rows rows, String path) {
        Map<String, Tree.Fields> named = new LinkedHashMap<>();
        for (Tree item : rows.items()) {
            if (item instanceof Tree.Fields map) {
                map.name().ifPresent(name -> named.put(name, map));
            }
        }
        old.rename(
                path,
                List.copyOf(named.keySet()),
                (gone, name) -> inCommon(named.get(name), OldText.path(path, gone)));
    }

    /** How many of a map's plain fields the old text had already. */
    private int inCommon(Tree.Fields map, String path) {
        return (int)
                map.all().entrySet().stream()
                        .filter(
                                field ->
                                        isSaid(
                                                field.getValue(),
                                                OldText.path(path, field.getKey())))
                        .count();
    }

    private boolean isSaid(Tree value, String path) {
        if (value instanceof Tree.Number number) {
            return old.spelling(path, number.value()).isPresent();
        }
        Optional<String> said = old.text(path);
        return value instanceof Tree.Text text && said.equals(Optional.of(text.text()))
                || value instanceof Tree.Word word && said.equals(Optional.of(word.word()));
    }

    /**
     * Fields by name and items by their own name or their number, without what need not be said.
     */
    private List<Map.Entry<String, Tree>> children(Tree tree, String path) {
        List<Map.Entry<String, Tree>> children = new ArrayList<>();
        if (tree instanceof Tree.Fields map) {
            map.all()
                    .forEach(
                            (name, value) -> {
                                if (!map.isUsual(name) || old.has(OldText.path(path, name))) {
                                    children.add(Map.entry(name, value));
                                }
                            });
        } else if (tree instanceof Tree.Rows rows) {
            int i = 0;
            for (Tree item : rows.items()) {
                Optional<String> name =
                        item instanceof Tree.Fields map ? map.name() : Optional.empty();
                children.add(
                        Map.entry(name.isPresent() ? name.get() : Integer.toString(i++), item));
            }
        }
        return children;
    }

    /**
     * Writes a map's fields one below the other.
     *
     * @param first what the first line begins with instead of blanks, or empty
     */
    private void fields(Tree.Fields map, String path, int indent, String first) {
        String lead = first;
        List<Map.Entry<String, Tree>> children = children(map, path);
        if (!first.isEmpty() && !children.isEmpty()) {
            old.passDown(path, OldText.path(path, children.get(0).getKey()));
        }
        for (Map.Entry<String, Tree> field : children) {
            String child = OldText.path(path, field.getKey());
            if (path.isEmpty() && old.isEmpty() && isLong(field.getValue())) {
                line("");
            }
            String head = lead.isEmpty() ? " ".repeat(indent) : lead;
            // The comments of a list's item stand above its dash already.
            above(child, indent);
            value(head + Scalars.of(field.getKey(), true) + ":", field.getValue(), child, indent);
            lead = "";
        }
    }

    /** The document's main lists are set off by a blank line. */
    private static boolean isLong(Tree tree) {
        return tree instanceof Tree.Rows rows && rows.isTall();
    }

    private void value(String head, Tree tree, String path, int indent) {
        if (tree instanceof Tree.Note note) {
            note(head, note.text(), path, indent + INDENT);
            return;
        }
        if (!isTall(tree, path)) {
            String flat = head + " " + flat(tree, path, false);
            boolean scalar = !(tree instanceof Tree.Fields) && !(tree instanceof Tree.Rows);
            if (scalar || flat.length() <= WIDTH || old.isOnOneLine(path)) {
                line(old.commented(flat, path));
                return;
            }
        }
        if (tree instanceof Tree.Fields map) {
            boolean item = head.endsWith("-");
            if (!item) {
                line(old.commented(head, path));
            }
            fields(map, path, indent + INDENT, item ? head + " " : "");
        } else {
            line(old.commented(head, path));
            rows((Tree.Rows) tree, path, indent + INDENT);
        }
    }

    private void rows(Tree.Rows rows, String path, int indent) {
        for (Map.Entry<String, Tree> item : children(rows, path)) {
            String child = OldText.path(path, item.getKey());
            above(child, indent);
            value(" ".repeat(indent) + "-", item.getValue(), child, indent);
        }
    }

    /** Whether a collection or anything in it must have lines of its own; an empty one has none. */
    private boolean isTall(Tree tree, String path) {
        List<Map.Entry<String, Tree>> children = children(tree, path);
        boolean own =
                tree instanceof Tree.Fields map && map.isTall()
                        || tree instanceof Tree.Rows rows && rows.isTall();
        return !children.isEmpty()
                && (own
                        || old.isTall(path)
                        || children.stream()
                                .anyMatch(
                                        c -> isTall(c.getValue(), OldText.path(path, c.getKey()))));
    }

    private String flat(Tree tree, String path, boolean within) {
        if (tree instanceof Tree.Text text) {
            return text(text.text(), path, within);
        }
        if (tree instanceof Tree.Note note) {
            return text(note.text(), path, within);
        }
        if (tree instanceof Tree.Word word) {
            boolean divides = within && word.word().contains(",");
            return divides ? Scalars.quoted(word.word()) : word.word();
        }
        if (tree instanceof Tree.Number number) {
            // A comma would divide a flow collection.
            return old.spelling(path, number.value())
                    .filter(spelling -> !within || !spelling.contains(","))
                    .orElseGet(() -> NumberText.shortest(number.value()));
        }
        boolean map = tree instanceof Tree.Fields;
        return children(tree, path).stream()
                .map(
                        c -> {
                            String child = OldText.path(path, c.getKey());
                            String value = flat(c.getValue(), child, true);
                            return map ? Scalars.of(c.getKey(), true) + ": " + value : value;
                        })
                .collect(Collectors.joining(", ", map ? "{" : "[", map ? "}" : "]"));
    }

    private String text(String text, String path, boolean within) {
        return old.writing(path, text, within)
                .filter(written -> !written.contains("\n"))
                .orElseGet(() -> Scalars.of(text, within));
    }

    private void note(String head, String text, String path, int indent) {
        Optional<String> written =
                old.writing(path, text, false).filter(old -> isIndented(old, indent));
        if (written.isPresent()) {
            line(old.commented(head + " " + written.get(), path));
            return;
        }
        String scalar = Scalars.of(text, false);
        boolean fits = head.length() + 1 + scalar.length() <= WIDTH;
        boolean printable = text.codePoints().allMatch(c -> c == '\n' || Scalars.isPrintable(c));
        List<String> lines = List.of(text.split("\n", -1));
        boolean plain = lines.stream().allMatch(line -> line.equals(line.strip()));
        if (fits && lines.size() == 1 || !printable || !plain) {
            line(old.commented(head + " " + scalar, path));
        } else if (lines.size() > 1) {
            line(old.commented(head + " |-", path));
            lines.forEach(each -> line(each.isEmpty() ? "" : " ".repeat(indent) + each));
        } else if (text.contains("  ")) {
            // Folding would make one blank of two.
            line(old.commented(head + " " + scalar, path));
        } else {
            line(old.commented(head + " >-", path));
            folded(text, indent);
        }
    }

    /** Whether the further lines of a text stand far enough in for where it is written now. */
    private static boolean isIndented(String text, int indent) {
        return text.lines().skip(1).allMatch(l -> l.isBlank() || l.startsWith(" ".repeat(indent)));
    }

    private void folded(String text, int indent) {
        StringBuilder row = new StringBuilder();
        for (String word : text.split(" ")) {
            if (row.length() > 0 && indent + row.length() + 1 + word.length() > WIDTH) {
                line(" ".repeat(indent) + row);
                row.setLength(0);
            }
            row.append(row.length() == 0 ? "" : " ").append(word);
        }
        line(" ".repeat(indent) + row);
    }

    private void above(String path, int indent) {
        for (String each : old.above(path)) {
            line(each.isEmpty() ? "" : " ".repeat(indent) + each);
        }
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
