package haftline.cli;

import haftline.set.TemplateSettings;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What {@code make} is to make: parts of the work, each in some kinds of file.
 *
 * <p>A part that is named comes in the kinds named, or in all of its own where none of them is; a
 * kind in which no named part comes stands for everything of that kind.
 */
final class Wanted {
    private final Map<Part, Set<Format>> files = new EnumMap<>(Part.class);
    private final Set<Format> formats;
    private final Set<Part> named;

    private Wanted(Set<Format> formats, Set<Part> named) {
        this.named = named;
        this.formats = EnumSet.noneOf(Format.class);
        this.formats.addAll(formats);
        Set<Format> loose = EnumSet.noneOf(Format.class);
        loose.addAll(formats);
        for (Part part : named) {
            Set<Format> kinds = EnumSet.copyOf(part.formats());
            kinds.retainAll(formats);
            files.put(part, kinds.isEmpty() ? part.formats() : kinds);
            loose.removeAll(part.formats());
        }
        for (Part part : Part.values()) {
            Set<Format> kinds = EnumSet.copyOf(part.formats());
            kinds.retainAll(loose);
            if (!kinds.isEmpty() && !files.containsKey(part)) {
                files.put(part, kinds);
            }
        }
        files.values().forEach(this.formats::addAll);
    }

    static Wanted everything() {
        return of(EnumSet.allOf(Format.class));
    }

    /** Everything, in some kinds of file. */
    static Wanted of(Set<Format> formats) {
        return new Wanted(formats, Set.of());
    }

    static Wanted of(List<Only> words) {
        Set<Format> formats = EnumSet.noneOf(Format.class);
        Set<Part> named = EnumSet.noneOf(Part.class);
        for (Only word : words) {
            word.format().ifPresent(formats::add);
            named.addAll(word.parts());
        }
        return new Wanted(formats, named);
    }

    boolean has(Part part, Format format) {
        return files.getOrDefault(part, Set.of()).contains(format);
    }

    /** All kinds of file that are to be written. */
    Set<Format> formats() {
        return Collections.unmodifiableSet(formats);
    }

    /** Kinds of file for what is cut out of sheets; none where nothing is. */
    Set<Format> templateFormats() {
        Set<Format> kinds = EnumSet.noneOf(Format.class);
        Part.TEMPLATES.forEach(part -> kinds.addAll(files.getOrDefault(part, Set.of())));
        return kinds;
    }

    /** The maker's settings, with exactly those cards that are named, where any are. */
    TemplateSettings over(TemplateSettings settings) {
        if (Collections.disjoint(named, Part.TEMPLATES)) {
            return settings;
        }
        return settings.withGauges(
                        settings.gauges()
                                .withMade(
                                        named.contains(Part.PROFILE_GAUGE),
                                        named.contains(Part.SLOTS),
                                        named.contains(Part.STORY_ROD)))
                .withCopying(settings.copying().withMade(named.contains(Part.COPYING)));
    }
}
