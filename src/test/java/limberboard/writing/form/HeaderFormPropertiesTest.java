package limberboard.writing.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.form.FieldValue.Many;
import limberboard.writing.form.FieldValue.Text;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is typed into a field stands there, everything else stays, and back is back. */
class HeaderFormPropertiesTest {
  private static final List<String> LINES =
      List.of(
          "title: Grease it # short",
          "summary: >-\n  Folded over\n  two lines",
          "# a remark",
          "",
          "mine: {keep: [this, 'as it is']}",
          "system:   \"keel\"",
          "said-as: [one, 'two', \"three\"]",
          "sources:\n- first # best\n\n# between\n- second",
          "minutes: 20",
          "resets: []",
          "skill:");

  @Provide
  Arbitrary<String> pages() {
    return Combinators.combine(
            Arbitraries.shuffle(LINES),
            Arbitraries.integers().between(2, LINES.size()),
            Arbitraries.of("\n", "\r\n"),
            Arbitraries.of("", "\uFEFF"))
        .as(
            (lines, count, end, mark) ->
                mark
                    + ("---\n" + String.join("\n", lines.subList(0, count)) + "\n---\nText.\n")
                        .replace("\n", end));
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("ab é1:#'\"[]{},-|>&*!%@`\\/").ofMaxLength(12),
        Arbitraries.of("no", "null", "~", "P1Y", "12", "--05-01", "- a", "a: b", "a #b", " a "),
        Arbitraries.of("two\nlines", "two\n\nlines, one: empty", "# no remark", "ends\n", "🙂: b"));
  }

  @Property(tries = 300)
  void aTextStandsAsItWasTyped(
      @ForAll("pages") String text, @ForAll("texts") String typed, @ForAll boolean title)
      throws Unchangeable {
    HeaderForm form = HeaderForm.of(Kind.PROCEDURE, new PageText(text)).orElseThrow();
    String key = title ? "title" : "minutes";
    HeaderForm there = form.set(key, new Text(typed));
    assertThat(there.value(key)).contains(new Text(typed));
    HeaderForm again = HeaderForm.of(Kind.PROCEDURE, there.page()).orElseThrow();
    assertThat(again.value(key)).contains(new Text(typed));
    for (FormField field : form.fields()) {
      if (!field.key().equals(key)) {
        assertThat(again.value(field.key())).isEqualTo(field.value());
      }
    }
    assertThat(again.unknown()).isEqualTo(form.unknown());
    back(form, there, key);
  }

  @Property(tries = 300)
  void aListStandsAsItWasTyped(
      @ForAll("pages") String text, @ForAll("texts") String one, @ForAll("texts") String two)
      throws Unchangeable {
    HeaderForm form = HeaderForm.of(Kind.PROCEDURE, new PageText(text)).orElseThrow();
    for (String key : List.of("said-as", "sources", "resets")) {
      Many list = new Many(List.of("second", one, two, "three"));
      HeaderForm there = form.set(key, list);
      assertThat(there.value(key)).contains(list);
      back(form, there, key);
    }
  }

  private static void back(HeaderForm form, HeaderForm there, String key) throws Unchangeable {
    HeaderForm back =
        form.value(key).isPresent() ? there.set(key, form.value(key).get()) : there.clear(key);
    assertThat(back.page().text()).isEqualTo(form.page().text());
  }
}
