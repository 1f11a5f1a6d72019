package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;

class PicturesCommandTest {
  private final List<PictureOrder> orders = new ArrayList<>();
  private final StringWriter errors = new StringWriter();

  @Test
  void theUsualSizeIsThatOfTheGuide() {
    assertThat(run("pictures", "--to", "somewhere")).isEqualTo(ExitCode.OK);
    assertThat(orders).hasSize(1);
    assertThat(orders.get(0).width()).isEqualTo(1280);
    assertThat(orders.get(0).height()).isEqualTo(800);
    assertThat(orders.get(0).textPercent()).isEqualTo(100);
  }

  @Test
  void anotherSizeAndTextCanBeAskedFor() {
    int code = run("pictures", "--to", "somewhere", "--size", "1024x700", "--text", "150");
    assertThat(code).isEqualTo(ExitCode.OK);
    assertThat(orders.get(0).width()).isEqualTo(1024);
    assertThat(orders.get(0).height()).isEqualTo(700);
    assertThat(orders.get(0).textPercent()).isEqualTo(150);
  }

  @Test
  void whatIsNoSizeIsRefusedInWords() {
    assertThat(run("pictures", "--to", "x", "--size", "wide")).isEqualTo(ExitCode.USAGE);
    assertThat(run("pictures", "--to", "x", "--text", "900")).isEqualTo(ExitCode.USAGE);
    assertThat(orders).isEmpty();
    assertThat(errors.toString()).contains("say 1280x800").contains("not from 100 to 200");
  }

  private int run(String... args) {
    CommandContext session =
        new CommandContext(
            new BufferedReader(new StringReader("")),
            new PrintWriter(new StringWriter()),
            new PrintWriter(errors, true),
            Path.of("").toAbsolutePath(),
            Optional.empty(),
            LocalDate.of(2026, 3, 15));
    return new Terminal(session, new NoWindow()).run(args);
  }

  private final class NoWindow implements Terminal.Window {
    @Override
    public boolean open(WorkspaceFolders folders) {
      return false;
    }

    @Override
    public boolean pictures(WorkspaceFolders folders, LocalDate today, PictureOrder order) {
      orders.add(order);
      return true;
    }
  }
}
