package limberboard.letters.inbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.letters.mail.Mailbox;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From whom answers are. */
class YardAddressTest {
  @TempDir private Path folder;
  private WorkspaceFolders folders;

  @BeforeEach
  void workspace() throws IOException {
    folders = new WorkspaceFolders(folder);
    Files.createDirectories(folders.letters());
  }

  private YardAddress written(String text) throws IOException {
    Files.writeString(folders.letters().resolve(YardAddress.FILE), text);
    return YardAddress.read(folders);
  }

  @Test
  void withoutTheFileItLeadsNowhere() {
    YardAddress none = YardAddress.read(folders);
    assertThat(none.from().address()).isEqualTo(Mailbox.NOWHERE);
    assertThat(none.isSet()).isFalse();
    assertThat(none.problem()).isEmpty();
  }

  @Test
  void aNameAndAnAddressAreTaken() throws IOException {
    YardAddress yard =
        written("# who answers\r\n\r\n\"The Tarnwick Boatyard\" <office@tarnwick.example>\r\n");
    assertThat(yard.problem()).isEmpty();
    assertThat(yard.isSet()).isTrue();
    assertThat(yard.from())
        .isEqualTo(new Mailbox("The Tarnwick Boatyard", "office@tarnwick.example"));
    assertThat(written("office@tarnwick.example").from().name()).isEmpty();
  }

  /** The addresses are those of RFC 5322, appendix A.1.1, and what is none. */
  @Test
  void addressesAreThoseOfTheStandard() {
    assertThat(YardAddress.parse("John Doe <jdoe@machine.example>"))
        .contains(new Mailbox("John Doe", "jdoe@machine.example"));
    assertThat(YardAddress.parse("john.q.public@example.com")).isPresent();
    assertThat(YardAddress.parse("\"Giant; \\\"Big\\\" Box\" <sysservices@example.net>"))
        .isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "office",
        "office@",
        "@tarnwick.example",
        "a..b@tarnwick.example",
        "office@tarnwick..example",
        "office@tarnwick.example\rBcc: all@example.org",
        "Yard\u2028Bcc: all@example.org <office@tarnwick.example>",
        "a@example.org, b@example.org",
        "<a@example.org> <b@example.org>",
        "Yard <office@tarnwick.example"
      })
  void whatIsNoAddressOrHidesAnotherLineIsRefused(String text) {
    assertThat(YardAddress.parse(text)).isEmpty();
  }

  @Test
  void anotherLineIsRefusedAndSaid() throws IOException {
    YardAddress yard = written("office@tarnwick.example\nBcc: all@example.org\n");
    assertThat(yard.from()).isEqualTo(YardAddress.NOBODY);
    assertThat(yard.problem().orElseThrow().toString()).contains("more than one line");
    assertThat(written("# nobody\n").problem().orElseThrow().toString()).contains("names nobody");
    assertThat(written("x".repeat(20_000)).problem()).isPresent();
  }
}
