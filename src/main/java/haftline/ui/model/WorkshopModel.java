package haftline.ui.model;

import haftline.handle.Rules;
import haftline.set.HandleSet;
import haftline.set.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Settings of the workshop, in the order in which they are decided: those by which gauges and
 * copying templates are made, or those by which a batch is cut and priced. All rows are there from
 * the beginning; which of them mean anything goes by the others.
 */
public final class WorkshopModel {
    /** The chapter under which the sticks stand. */
    public static final String SAW = "Saw and sticks";

    private final EditorModel editor;
    private final List<Chapter> chapters;
    private final Watched<Workshop> workshop;
    private Rules.Copying copying;

    /**
     * Settings that belong together.
     *
     * @param title what stands over them
     * @param settings the settings
     */
    public record Chapter(String title, List<Setting> settings) {
        /** Copies the list. */
        public Chapter {
            settings = List.copyOf(settings);
        }
    }

    private WorkshopModel(EditorModel editor, List<Chapter> chapters) {
        this.editor = editor;
        this.chapters = List.copyOf(chapters);
        workshop = new Watched<>(editor.draft().value().set().workshop());
        copying = editor.draft().value().set().rules().copying();
        editor.draft().watch(draft -> follow());
        editor.units().watch(units -> refresh());
    }

    /**
     * How gauges and copying templates of an editor's set are made.
     *
     * @param editor the editor
     * @return the settings
     */
    public static WorkshopModel ofTemplates(EditorModel editor) {
        WorkshopFields fields = new WorkshopFields(editor);
        CuttingSettings cutting = new CuttingSettings(fields);
        return new WorkshopModel(
                editor,
                List.of(
                        new Chapter("Cut with", cutting.tools()),
                        new Chapter("Sheet to cut from", cutting.sheet()),
                        new Chapter("Gauges", new GaugeSettings(fields).all()),
                        new Chapter("Copying templates", new CopyingSettings(fields).all()),
                        new Chapter("Lettering", cutting.lettering()),
                        new Chapter("Files and paper", cutting.files())));
    }

    /**
     * How a batch of an editor's set is cut and priced.
     *
     * @param editor the editor
     * @return the settings
     */
    public static WorkshopModel ofCosts(EditorModel editor) {
        CostSettings costs = new CostSettings(new WorkshopFields(editor));
        return new WorkshopModel(
                editor,
                List.of(
                        new Chapter(SAW, costs.saw()),
                        new Chapter("Rates", costs.all()),
                        new Chapter("Adhesive", costs.adhesive())));
    }

    private void follow() {
        HandleSet set = editor.draft().value().set();
        boolean isOther =
                !set.workshop().equals(workshop.value()) || !set.rules().copying().equals(copying);
        copying = set.rules().copying();
        if (isOther) {
            refresh();
            workshop.set(set.workshop());
        }
    }

    private void refresh() {
        chapters.stream()
                .flatMap(chapter -> chapter.settings().stream())
                .forEach(setting -> setting.row().refresh());
    }

    /**
     * The settings.
     *
     * @return in the order in which they are decided
     */
    public List<Chapter> chapters() {
        return chapters;
    }

    /**
     * A setting by its label.
     *
     * @param label what it is of
     * @return the setting, or empty
     */
    public Optional<Setting> setting(String label) {
        return chapters.stream()
                .flatMap(chapter -> chapter.settings().stream())
                .filter(setting -> setting.row().label().equals(label))
                .findFirst();
    }

    /**
     * The workshop as it is now.
     *
     * @return watched; told after the rows are up to date
     */
    public Watched<Workshop> workshop() {
        return workshop;
    }

    /**
     * Where the settings are saved.
     *
     * @return a sentence
     */
    public String savedIn() {
        return file().map(
                        file ->
                                "Saved with the set in "
                                        + file
                                        + ", which other sets may name too.")
                .orElse("Saved with the set, in a workshop file of its own beside it.");
    }

    private Optional<Path> file() {
        return editor.draft()
                .value()
                .references()
                .workshop()
                .map(file -> Path.of(file).getFileName());
    }
}
