package haftline.ui.model;

import haftline.write.PlannedFile;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Executor;

/** What planned files would look like, one at a time; only what was asked for last is shown. */
final class ExportPreviews {
    /** More than a page of a table is not read in a preview, bytes. */
    private static final int MOST_SHOWN = 6000;

    private final Executor background;
    private final Executor drawing;
    private final Watched<ExportPreview> shown = new Watched<>(new ExportPreview.Waiting(""));

    /** Tells a preview that was overtaken; read by the background too. */
    private volatile int number;

    ExportPreviews(Executor background, Executor drawing) {
        this.background = background;
        this.drawing = drawing;
    }

    Watched<ExportPreview> shown() {
        return shown;
    }

    /** Shows a file as soon as that is made; nothing where there is none. */
    void show(Optional<PlannedFile> file) {
        int own = number + 1;
        number = own;
        shown.set(new ExportPreview.Waiting(file.map(PlannedFile::name).orElse("")));
        file.ifPresent(
                one ->
                        background.execute(
                                () -> {
                                    // Who runs down the list does not wait for what was passed by.
                                    if (own == number) {
                                        ExportPreview made = made(one);
                                        drawing.execute(() -> take(own, made));
                                    }
                                }));
    }

    private void take(int own, ExportPreview made) {
        if (own == number) {
            shown.set(made);
        }
    }

    private static ExportPreview made(PlannedFile file) {
        if (file.drawing().isPresent()) {
            return new ExportPreview.Drawn(file.name(), file.drawing().get().get());
        }
        Optional<byte[]> content = file.content().get();
        if (content.isEmpty()) {
            return new ExportPreview.Failed(file.name(), "This file cannot be made");
        }
        if (file.name().endsWith(".png")) {
            return new ExportPreview.Picture(file.name(), content.get());
        }
        int length = Math.min(content.get().length, MOST_SHOWN);
        return new ExportPreview.Words(
                file.name(), new String(content.get(), 0, length, StandardCharsets.UTF_8));
    }
}
