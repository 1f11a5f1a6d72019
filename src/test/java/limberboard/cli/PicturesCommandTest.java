package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;

class PicturesCommandTest {
  private final List<PictureOrder> orders = new ArrayList<>();

  @Test
  void theUsualSizeIsThatOfTheGuide() {
    assertThat(run("pictures", "--to", "somewhere").code()).isEqualTo(ExitCode.OK);
    assertThat(orders).hasSize(1);
    assertThat(orders.get(0).width()).isEqualTo(1280);
    assertThat(orders.get(0).height()).isEqualTo(800);
    assertThat(orders.get(0).textPercent()).isEqualTo(100);
  }

  @Test
  void anotherSizeAndTextCanBeAskedFor() {
    run("pictures", "--to", "somewhere", "--size", "1024x700", "--text", "150").ended(ExitCode.OK);
    assertThat(orders.get(0).width()).isEqualTo(1024);
    assertThat(orders.get(0).height()).isEqualTo(700);
    assertThat(orders.get(0).textPercent()).isEqualTo(150);
  }

  @Test
  void whatIsNoSizeIsRefusedInWords() {
    assertThat(run("pictures", "--to", "x", "--size", "wide").ended(ExitCode.USAGE).err())
        .contains("say 1280x800");
    assertThat(run("pictures", "--to", "x", "--text", "900").ended(ExitCode.USAGE).err())
        .contains("not from 100 to 200");
    assertThat(orders).isEmpty();
  }

  private Ran run(String... args) {
    Terminal.Window window =
        new TerminalRun.NoWindow() {
          @Override
          public boolean pictures(WorkspaceFolders folders, LocalDate today, PictureOrder order) {
            orders.add(order);
            return true;
          }
        };
    return new TerminalRun(Path.of("").toAbsolutePath(), LocalDate.of(2026, 3, 15), window)
        .run(args);
  }
}
