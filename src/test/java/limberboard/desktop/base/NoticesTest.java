package limberboard.desktop.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoticesTest {
  private final Notices notices = new Notices();

  private String failure(String doing, Throwable cause) {
    notices.failure(doing, cause);
    Optional<Notices.Notice> notice = notices.current();
    assertThat(notice.map(Notices.Notice::failure)).contains(true);
    return notice.orElseThrow().text();
  }

  @Test
  void whoGoesOnHasSeenWhatAsksForNothing() {
    notices.tell("Petrel is saved.");
    notices.seen();
    assertThat(notices.current()).isEmpty();
    notices.tell("Saved as plan.pdf.", new Notices.Offer("Open", () -> {}));
    notices.seen();
    assertThat(notices.current()).isPresent();
    notices.warn("It is not saved.");
    notices.seen();
    assertThat(notices.current()).isPresent();
  }

  @Test
  void whatCannotBeWrittenSaysWhyAndWhatToDo() {
    assertThat(
            failure(
                "Saving Redshank",
                new AccessDeniedException("/w/boats/redshank/.boat.yaml-9894123.tmp")))
        .isEqualTo(
            "Not saved: /w/boats/redshank/boat.yaml: you have no permission for it. Check that the"
                + " file and its folder are there, that you may write there, and that the disk has"
                + " room");
    assertThat(
            failure(
                "Writing into the log",
                new FileSystemException(
                    "/w/boats/redshank/.log.csv-7765123.tmp", null, "No space left on device")))
        .startsWith("Not saved: /w/boats/redshank/log.csv: no space left on device.")
        .doesNotContain("tmp");
  }

  @Test
  void otherThingsSayWhatDidNotWork() {
    assertThat(failure("Reading the library", new IOException("the folder articles is missing")))
        .isEqualTo("Reading the library did not work: the folder articles is missing");
  }
}
