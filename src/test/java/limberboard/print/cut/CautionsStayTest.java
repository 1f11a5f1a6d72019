package limberboard.print.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Head;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.Skill;
import limberboard.library.value.Work;
import limberboard.print.SmallYard;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.picture.Look;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** No cut ever removes a caution that a procedure names, in any output. */
class CautionsStayTest {
  private static final SmallYard YARD = new SmallYard();
  private static final List<String> BOATS = List.of("avocet", "knot", "");

  @Property(tries = 200, seed = "20261125")
  void cautionsOfTheProcedureAreAlwaysThereAndFirst(
      @ForAll("procedures") Page<Procedure> page, @ForAll("boats") String boat) {
    CutPage cut =
        new PageCutter(YARD.workspace().library())
            .cut(page, Optional.of(boat).filter(id -> !id.isEmpty()).map(YARD::boat));
    List<String> named = CautionUse.ids(page.details().cautions()).stream().distinct().toList();
    List<String> shown = cut.cautions().stream().map(Block.CautionBox::id).toList();
    assertThat(shown).containsAll(named).doesNotHaveDuplicates();
    assertThat(shown.stream().map(CautionsStayTest::isGrave).toList())
        .isSortedAccordingTo(Comparator.reverseOrder());
    if (!named.isEmpty()) {
      assertThat(cut.parts().get(0).role()).isEqualTo(Part.Role.CAUTIONS);
    }
    String text = YARD.text(cut);
    String xhtml = YARD.xhtml(cut, Look.LIGHT);
    assertThat(cut.shortCautions()).extracting(Block.ShortCaution::id).isEqualTo(shown);
    for (Block.ShortCaution caution : cut.shortCautions()) {
      assertThat(text.indexOf(caution.danger())).isBetween(0, before(text));
      assertThat(xhtml.indexOf(caution.danger())).isBetween(0, before(xhtml));
    }
    for (Block.CautionBox caution : cut.cautions()) {
      assertThat(text.lastIndexOf(caution.danger())).isGreaterThan(before(text));
      assertThat(xhtml.lastIndexOf(caution.danger())).isGreaterThan(before(xhtml));
    }
  }

  /** What the library does not know might be grave. */
  private static boolean isGrave(String id) {
    return YARD.workspace().library().caution(id).map(page -> page.details().grave()).orElse(true);
  }

  /** Where the first fact stands, which comes after all cautions. */
  private static int before(String output) {
    return output.indexOf("Who");
  }

  @Provide
  Arbitrary<String> boats() {
    return Arbitraries.of(BOATS);
  }

  @Provide
  Arbitrary<Page<Procedure>> procedures() {
    return Combinators.combine(
            Arbitraries.of("ashore", "vapour", "fire", "gas", "no-such-caution")
                .list()
                .ofMaxSize(4),
            Arbitraries.of(Skill.class),
            conditions(),
            conditions(),
            conditions(),
            Arbitraries.of("# Steps\nDo it.\n", "## Steps\n\n1. One\n\n### Hint\n\nx\n", ""))
        .as(CautionsStayTest::procedure);
  }

  private static Arbitrary<Condition> conditions() {
    return Arbitraries.of("saildrive", "shaft", "gas", "")
        .map(
            choice ->
                choice.isEmpty()
                    ? Condition.ALWAYS
                    : new Condition(
                        null, null, null, List.of(choice), null, null, null, null, null, null));
  }

  private static Page<Procedure> procedure(
      List<String> cautions,
      Skill skill,
      Condition fits,
      Condition section,
      Condition material,
      String body) {
    MaterialUse use =
        new MaterialUse(
            "sealant",
            material,
            "",
            Optional.of(new Amount.Measured("hatch-seal", 1)),
            null,
            null,
            null,
            null,
            null);
    Procedure procedure =
        new Procedure(
            Work.MEND,
            skill,
            10,
            null,
            List.of("cover-off"),
            List.of(new ToolUse("spanner", material)),
            List.of(use),
            cautions.stream().map(CautionUse::always).toList(),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null);
    Head head = new Head("Job", "", null, null, null, fits, null, Map.of("Steps", section));
    return new Page<>("job", "articles/procedures/job.md", head, procedure, body, 1);
  }
}
