package haftline.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class SwitchesTest {
    @Test
    void oneIsAlwaysOn() {
        List<String> done = new ArrayList<>();
        ToggleButton first = new ToggleButton("mm");
        ToggleButton second = new ToggleButton("inch");
        first.setOnAction(e -> done.add("mm"));
        second.setOnAction(e -> done.add("inch"));
        WaitForAsyncUtils.waitForAsyncFx(
                5000,
                () -> {
                    new Switches(first, second);
                    assertThat(first.isSelected()).isTrue();
                    first.fire();
                    assertThat(first.isSelected()).isTrue();
                    second.fire();
                    second.fire();
                    assertThat(second.isSelected()).isTrue();
                    assertThat(first.isSelected()).isFalse();
                });
        assertThat(done).containsExactly("mm", "inch", "inch");
    }
}
