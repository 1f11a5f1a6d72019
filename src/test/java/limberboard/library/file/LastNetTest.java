package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LastNetTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-05-20T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private LastNet net() {
    return new LastNet(FailureLog.in(folder.resolve("state"), NOON));
  }

  private Path file() {
    return folder.resolve("state/failures.txt");
  }

  @Test
  void aMistakeOfTheProgramIsOneLineAndItsTraceStandsInTheFile() throws IOException {
    String line = net().line("find", new IllegalStateException("no such thing\nat all"));
    assertThat(line)
        .startsWith("find did not work: a mistake of the program's own (IllegalStateException in ")
        .contains("Try again")
        .endsWith("the details are in " + file())
        .doesNotContain("\n");
    assertThat(Files.readString(file()))
        .startsWith("2026-05-20T12:00:00Z find")
        .contains("no such thing")
        .contains("\tat limberboard.library.file.LastNetTest.");
  }

  @Test
  void troubleWithAFileNamesTheFileAndTheReason() {
    assertThat(net().line("due", new UncheckedIOException(new AccessDeniedException("/w/log.csv"))))
        .startsWith("due did not work: /w/log.csv: you have no permission for it. Check");
    assertThat(
            net()
                .line(
                    "due",
                    new IllegalStateException(
                        new FileSystemException("/w/a", null, "No space left on device"))))
        .contains("/w/a: no space left on device");
  }

  @Test
  void tooLittleMemoryAndEndlessNestingSayWhatToDo() {
    assertThat(net().line("read", new OutOfMemoryError("Java heap space")))
        .contains("the memory was not enough")
        .contains("-Xmx4g");
    assertThat(net().line("read", overflow())).contains("nested too deeply").contains("validate");
  }

  private static Throwable overflow() {
    try {
      return new IllegalStateException("depth " + depth(0));
    } catch (StackOverflowError e) {
      return e;
    }
  }

  private static int depth(int from) {
    return depth(from + 1) + 1;
  }

  @Test
  void aStateFolderThatCannotBeWrittenIsSaid() throws IOException {
    Files.writeString(folder.resolve("state"), "a file where the folder would be");
    assertThat(net().line("find", new IllegalStateException()))
        .startsWith("find did not work")
        .endsWith("the details could not be written down");
    assertThat(new LastNet(FailureLog.nowhere()).line("find", new IllegalStateException()))
        .endsWith("the details could not be written down");
  }

  @Test
  void theFileIsBegunAnewWhenItIsFull() throws IOException {
    FailureLog log = FailureLog.in(folder.resolve("state"), NOON);
    String remark = "x".repeat(20_000);
    for (int i = 0; i < 60; i++) {
      assertThat(log.write(remark)).contains(file());
    }
    assertThat(Files.size(file())).isLessThan(FailureLog.LARGEST + 40_000);
    assertThat(Files.size(folder.resolve("state/failures-before.txt")))
        .isBetween((long) FailureLog.LARGEST, FailureLog.LARGEST + 40_000L);
    try (var files = Files.list(folder.resolve("state"))) {
      assertThat(files).hasSize(2);
    }
  }

  @Test
  void aFailureThatCannotEvenBePrintedIsStillOneLine() {
    String line =
        net()
            .line(
                "find",
                new IllegalStateException() {
                  @Override
                  public String getMessage() {
                    throw new IllegalStateException("again");
                  }
                });
    assertThat(line).startsWith("find did not work");
  }
}
