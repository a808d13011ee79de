package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditorStartTest {
    @TempDir Path folder;

    private static boolean isPlain(String... args) {
        return EditorStart.isPlain(args);
    }

    @Test
    void onlyTheVerbAloneOrWithAFileNeedsNoLookingUp() {
        assertThat(isPlain("edit")).isTrue();
        assertThat(isPlain("edit", "set.yaml")).isTrue();
        assertThat(isPlain()).isFalse();
        assertThat(isPlain("check")).isFalse();
        assertThat(isPlain("edit", "--help")).isFalse();
        assertThat(isPlain("edit", "")).isFalse();
        assertThat(isPlain("edit", "one.yaml", "two.yaml")).isFalse();
    }

    @Test
    void opensInThisMachineWhereItRunsOffAClassPath() {
        assertThat(EditorStart.elsewhere(new String[] {"edit"})).isEmpty();
        assertThat(EditorStart.elsewhere(new String[] {"check"})).isEmpty();
    }

    @Test
    void leavesOutLambdasOfClassesThatAreTooOld() throws IOException {
        File jar = folder.resolve("some.jar").toFile();
        try (OutputStream out = Files.newOutputStream(jar.toPath());
                ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, "a/Old.class", 49);
            put(zip, "a/New.class", 61);
        }
        List<String> list =
                List.of(
                        "a/Old id: 1",
                        "@lambda-proxy a/New run ()La/Old; ()V REF_invokeStatic a/New x ()V ()V",
                        "@lambda-proxy a/New run (La/New;I)Ljava/lang/Runnable; ()V",
                        "@lambda-form-invoker [LF_RESOLVE] Holder invokeStatic L_L");
        assertThat(ClassArchive.of(jar).taken(list))
                .containsExactly(list.get(0), list.get(2), list.get(3));
    }

    @Test
    void anotherJarHasAnotherArchive() throws IOException {
        Path one = Files.write(folder.resolve("one.jar"), new byte[] {1});
        Path two = Files.write(folder.resolve("two.jar"), new byte[] {1, 2});
        assertThat(ClassArchive.of(one.toFile()).name())
                .isEqualTo(ClassArchive.of(one.toFile()).name())
                .isNotEqualTo(ClassArchive.of(two.toFile()).name());
    }

    private static void put(ZipOutputStream zip, String name, int version) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(
                new byte[] {
                    (byte) 0xCA, (byte) 0xFE, (byte) 0xBA, (byte) 0xBE, 0, 0, 0, (byte) version
                });
        zip.closeEntry();
    }
}
