package haftline.ui.model;

import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.WhoseRule;
import haftline.handle.Rules;
import haftline.measure.NumberText;
import haftline.set.HandleSet;
import haftline.stock.Catalogue;
import haftline.stock.CatalogueException;
import haftline.stock.Figure;
import haftline.stock.Source;
import haftline.stock.Stock;
import haftline.stock.Wood;
import haftline.store.KeyLine;
import haftline.store.LoadedSet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whose rule a finding goes by, and where that is written.
 *
 * @param title whose it is, in a few words
 * @param lines key and value, file and line, citations in full
 * @param file the file that holds the rule, for who would read or change it; empty where none does
 */
public record RuleSource(String title, List<String> lines, Optional<Path> file) {
    /** Copies the list. */
    public RuleSource {
        lines = List.copyOf(lines);
    }

    /**
     * The source of a finding.
     *
     * @param finding the finding
     * @param stock the stock of its handle
     * @param loaded the set, whose rules and catalogues are looked up
     * @return whose rule it is
     */
    static RuleSource of(Finding finding, Stock stock, LoadedSet loaded) {
        HandleSet set = loaded.set();
        List<String> lines = new ArrayList<>();
        Optional<RuleKey> key = RuleKey.of(finding, set.rules(), stock instanceof Wood);
        Optional<Path> file =
                key.flatMap(k -> loaded.references().rules())
                        .map(path -> loaded.file().resolveSibling(path).normalize());
        key.ifPresent(rule -> lines.addAll(rule(rule, set.rules(), file)));
        Set<String> citations = citations(finding, stock, loaded);
        lines.addAll(citations);
        String whose = WhoseRule.of(finding, stock);
        if (key.isEmpty() && citations.isEmpty()) {
            lines.add(plain(whose));
        }
        String title =
                key.isPresent() && file.isPresent()
                        ? "Your rule"
                        : citations.isEmpty() ? capital(whose) : "Published";
        return new RuleSource(
                key.isPresent() && !citations.isEmpty()
                        ? "The limit is common practice, its figures are published"
                        : title,
                lines,
                file);
    }

    private static List<String> rule(RuleKey key, Rules rules, Optional<Path> file) {
        String value = NumberText.upTo(key.value().applyAsDouble(rules), 3);
        List<String> lines = new ArrayList<>();
        lines.add("In a rules file it stands as " + key.group() + ": " + key.key() + ": " + value);
        if (file.isEmpty()) {
            lines.add(
                    "The set names no rules file, so this is what Haftline begins with: common"
                            + " practice, without a source.");
            return lines;
        }
        OptionalInt line = KeyLine.of(file.get(), key.group(), key.key());
        lines.add(
                line.isPresent()
                        ? file.get() + ", line " + line.getAsInt()
                        : file.get() + " does not state it, so common practice stands");
        lines.add("Common practice, without a source, until you change it there.");
        return lines;
    }

    private static String plain(String whose) {
        return switch (whose) {
            case "common practice" ->
                    "Common practice among turners. No published source is known, and no rule of"
                            + " yours sets it.";
            case "geometry" -> "It follows from the sizes alone: no rule can change it.";
            default -> capital(whose) + ".";
        };
    }

    private static Set<String> citations(Finding finding, Stock stock, LoadedSet loaded) {
        Set<String> cited = new LinkedHashSet<>();
        sources(finding, stock, loaded)
                .forEach(source -> cited.add(source.title() + " (" + source.basis().words() + ")"));
        return cited;
    }

    private static Stream<Source> sources(Finding finding, Stock stock, LoadedSet loaded) {
        if (finding.code() == Code.STOCK_IRRITATES) {
            return stock.cautions().stream().map(caution -> caution.source());
        }
        if (finding.code() == Code.TOO_SLENDER
                || finding.code() == Code.TOO_THICK
                || finding.code() == Code.LENGTH_FOR_THE_HAND) {
            return catalogue(loaded).stream()
                    .flatMap(all -> all.entries().stream())
                    .filter(source -> finding.subject().startsWith(source.title()));
        }
        if (!(stock instanceof Wood wood)) {
            return Stream.of();
        }
        return switch (finding.code()) {
            case SPLIT_INDEX ->
                    Stream.of(
                                    wood.strength().compressionAcrossMPa(),
                                    wood.strength().tensionAcrossMPa())
                            .flatMap(Optional::stream)
                            .map(Figure::source);
            case FERRULE_LOOSE_IN_WINTER ->
                    Stream.of(
                                    wood.movement().radialCoefficient(),
                                    wood.movement().tangentialCoefficient())
                            .flatMap(Optional::stream)
                            .map(Figure::source);
            default -> Stream.of();
        };
    }

    private static Optional<Catalogue<Source>> catalogue(LoadedSet loaded) {
        try {
            return Optional.of(loaded.catalogues().sources());
        } catch (CatalogueException spoilt) {
            // The set could not have been opened with it.
            return Optional.empty();
        }
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
