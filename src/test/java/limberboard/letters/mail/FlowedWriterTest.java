package limberboard.letters.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Text broken into lines by RFC 3676, sections 4.1 to 4.4, and put together again. */
class FlowedWriterTest {
  private static String again(String text) {
    String broken = FlowedWriter.broken(text).replace("\r\n", "\n");
    return FlowedText.joined(broken.substring(0, broken.length() - 1), false);
  }

  @Test
  void aLongParagraphIsBrokenAtSpacesThatStay() {
    String text = "one two three ".repeat(20).strip();
    String[] lines = FlowedWriter.broken(text).split("\r\n");
    assertThat(lines).hasSizeGreaterThan(3).allMatch(line -> line.length() <= 78);
    for (int i = 0; i < lines.length - 1; i++) {
      assertThat(lines[i]).endsWith(" ");
    }
    assertThat(lines[lines.length - 1]).doesNotEndWith(" ");
    assertThat(again(text)).isEqualTo(text);
  }

  @Test
  void whatMailProgramsWouldReadOtherwiseIsStuffedWithASpace() {
    assertThat(FlowedWriter.broken("> not quoted")).isEqualTo(" > not quoted\r\n");
    assertThat(FlowedWriter.broken("From here on")).isEqualTo(" From here on\r\n");
    assertThat(FlowedWriter.broken("  indented")).isEqualTo("   indented\r\n");
    assertThat(again("> not quoted")).isEqualTo("> not quoted".replace("> ", "> "));
  }

  @Test
  void aLineThatEndsDoesNotFlowOnButASignatureLineKeepsItsSpace() {
    assertThat(FlowedWriter.broken("Regards,   \n-- \nYard"))
        .isEqualTo("Regards,\r\n-- \r\nYard\r\n");
  }

  @Test
  void whateverTextIsGivenComesBackAsItWas() {
    Random random = new Random(5);
    for (int n = 0; n < 300; n++) {
      StringBuilder text = new StringBuilder();
      for (int words = random.nextInt(60); words >= 0; words--) {
        text.append("abcdefghijklmnop >-é", 0, 1 + random.nextInt(16));
        text.append(random.nextInt(12) == 0 ? "\n" : " ");
      }
      String flat = text.toString().replaceAll(" +(?=\n|$)", "").strip();
      assertThat(again(flat)).isEqualTo(flat);
    }
  }
}
