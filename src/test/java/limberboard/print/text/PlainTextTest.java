package limberboard.print.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import limberboard.library.page.Kind;
import limberboard.print.SmallYard;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages in a terminal. */
class PlainTextTest {
  private final SmallYard yard = new SmallYard();

  @Test
  void aProcedureReadsFromTopToBottom() {
    assertThat(yard.text(yard.cut("renew-seal", "avocet")))
        .containsSubsequence(
            "Renew the drive's seal\n======================\n",
            "Cut to Avocet",
            "- CAUTION: Boat ashore. A boat on props can fall. Look at the props.\n",
            "- CAUTION: Vapour. It makes dizzy. Open the hatches.\n",
            "To get there: Hauled out (3 h); Leg opened (20 min); Engine cover off (3 min)\n",
            "Materials: Sealant, 43.2 ml; Solvent, 50 ml; Washer, 3\n",
            "1. Open the leg.\n2. Press the seal out.\n",
            "Material ",
            "-------- ",
            "Left out for Avocet\n",
            "The cautions in full\n",
            "CAUTION: Boat ashore\n  A boat on props can fall.\n  - Look at the props.\n",
            "CAUTION: Vapour (Sealant)\n");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 200})
  void noLineIsWiderThanAsked(int width) {
    for (String page : List.of("renew-seal", "wet-bilge", "cruiser", "sealant", "check-gas")) {
      assertThat(new PlainText().render(yard.cut(page, "avocet"), width).lines())
          .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
    }
  }

  @Test
  void columnsAreAligned() {
    Block table =
        new Block.Table(
            List.of(Block.Side.LEFT, Block.Side.RIGHT, Block.Side.CENTRE),
            List.of(Inline.text("Bolt"), Inline.text("Torque"), Inline.text("Grease")),
            List.of(
                List.of(Inline.text("M6"), Inline.text("8 N·m"), Inline.text("no")),
                List.of(Inline.text("M10"), Inline.text("40 N·m"), Inline.text("yes"))));
    assertThat(text(table))
        .isEqualTo(
            """
            Bolt  Torque  Grease
            ----  ------  ------
            M6     8 N·m    no
            M10   40 N·m   yes
            """);
  }

  @Test
  void aRowOfOneCellGoesAcrossTheTable() {
    Block table =
        new Block.Table(
            List.of(Block.Side.LEFT, Block.Side.RIGHT),
            List.of(Inline.text("Bolt"), Inline.text("Torque")),
            List.of(
                List.of(Inline.text("Of stainless steel, with grease")),
                List.of(Inline.text("M10"), Inline.text("40 N·m"))));
    assertThat(text(table))
        .isEqualTo(
            """
            Bolt  Torque
            ----  ------
            Of stainless steel, with grease
            M10   40 N·m
            """);
  }

  @Test
  void aTableTooWideIsListed() {
    List<Block.Side> sides = Collections.nCopies(12, Block.Side.LEFT);
    List<List<Inline>> head = Collections.nCopies(12, Inline.text("Head"));
    List<List<Inline>> row = Collections.nCopies(12, Inline.text("value"));
    assertThat(text(new Block.Table(sides, head, List.of(row))))
        .startsWith("Head: value\nHead: value\n");
    assertThat(text(new Block.Table(sides, head, List.of(List.of(Inline.text("All of them"))))))
        .startsWith("All of them\n");
  }

  @Test
  void wordsLongerThanALineAreBroken() {
    assertThat(text(Block.Paragraph.of("x".repeat(100))).lines().toList())
        .containsExactly("x".repeat(80), "x".repeat(20));
  }

  @Test
  void whatWouldSteerATerminalIsDropped() {
    assertThat(text(Block.Paragraph.of("a\u001b[31mred\u0007\u202e\u009b1m b")))
        .isEqualTo("a[31mred1m b\n");
  }

  @Property(seed = "20261125")
  void wrappingLosesNoLetters(@ForAll String text, @ForAll @IntRange(min = 1, max = 90) int room) {
    List<String> lines = TextLines.wrap(text, room);
    assertThat(String.join("", lines).replaceAll("\\s+", ""))
        .isEqualTo(text.strip().replaceAll("\\s+", ""));
    assertThat(lines).allMatch(line -> TextLines.length(line) <= room);
  }

  private static String text(Block block) {
    CutPage page =
        new CutPage(
            "x", Kind.TOPIC, "X", "", "", List.of(new Part(Part.Role.BODY, "", List.of(block))));
    String text = new PlainText().render(page, 80);
    return text.substring(text.indexOf("=\n\n") + 3).replaceAll("\n\n$", "\n");
  }
}
