package haftline.ui.model;

import haftline.set.Workshop;
import java.util.List;
import java.util.Optional;

/**
 * The settings by which gauges and copying templates are made, in the order in which they are
 * decided. All rows are there from the beginning; which of them mean anything goes by the others.
 */
public final class WorkshopModel {
    private final EditorModel editor;
    private final List<Chapter> chapters;
    private final Watched<Workshop> workshop;

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

    /**
     * The settings of an editor's set.
     *
     * @param editor the editor
     */
    public WorkshopModel(EditorModel editor) {
        this.editor = editor;
        WorkshopFields fields = new WorkshopFields(editor);
        CuttingSettings cutting = new CuttingSettings(fields);
        chapters =
                List.of(
                        new Chapter("Cut with", cutting.tools()),
                        new Chapter("Sheet to cut from", cutting.sheet()),
                        new Chapter("Gauges", new GaugeSettings(fields).all()),
                        new Chapter("Copying templates", new CopyingSettings(fields).all()),
                        new Chapter("Lettering", cutting.lettering()),
                        new Chapter("Files and paper", cutting.files()));
        workshop = new Watched<>(editor.draft().value().set().workshop());
        editor.draft().watch(draft -> follow());
        editor.units().watch(units -> refresh());
    }

    private void follow() {
        Workshop now = editor.draft().value().set().workshop();
        if (!now.equals(workshop.value())) {
            refresh();
            workshop.set(now);
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
        return editor.draft()
                .value()
                .references()
                .workshop()
                .map(
                        file ->
                                "Saved with the set in "
                                        + java.nio.file.Path.of(file).getFileName()
                                        + ", which other sets may name too.")
                .orElse("Saved with the set, in a workshop file of its own beside it.");
    }
}
