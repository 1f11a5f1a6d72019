package limberboard.writing.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.value.Named;
import limberboard.writing.PageText;
import limberboard.writing.form.FieldValue.Many;
import limberboard.writing.form.FieldValue.Nested;
import limberboard.writing.form.FieldValue.Text;
import org.junit.jupiter.api.Test;

class HeaderFormTest {
  private static final String PROCEDURE =
      "---\r\n# made in winter\r\ntitle: Grease it # short\r\nsystem:   keel\r\nwork: service\r\n"
          + "skill: 'owner'\r\nminutes: 20\r\nmine: {a: 1}\r\ntools:\r\n  - ladle # the big one\r\n"
          + "  - {use: brush, fits: {use: charter}}\r\nresets: [one, \"two\", three]\r\n"
          + "sources:\r\n- first\r\n# between\r\n- second\r\n---\r\n1. Do it.\r\n";

  private static HeaderForm form(String text) {
    return HeaderForm.of(Kind.PROCEDURE, new PageText(text)).orElseThrow();
  }

  private static String set(String text, String key, FieldValue value) throws Unchangeable {
    return form(text).set(key, value).page().text();
  }

  private static Many many(String... entries) {
    return new Many(List.of(entries));
  }

  @Test
  void fieldsAreWhatTheRecordsDeclare() {
    List<FieldDeclaration> fields = FieldDeclaration.of(Kind.PROCEDURE);
    assertThat(fields.stream().map(FieldDeclaration::key))
        .containsSubsequence("title", "system", "zones", "work", "skill", "minutes", "sources");
    assertThat(field(Kind.PROCEDURE, "skill").choices())
        .containsExactly("owner", "handy", "yard", "licensed");
    assertThat(field(Kind.PROCEDURE, "title").required()).isTrue();
    assertThat(field(Kind.PROCEDURE, "minutes").kind()).isEqualTo(FieldKind.NUMBER);
    assertThat(field(Kind.MATERIAL, "shelf-life").kind()).isEqualTo(FieldKind.PERIOD);
    assertThat(field(Kind.MATERIAL, "bought").kind()).isEqualTo(FieldKind.YES_NO);
    assertThat(field(Kind.MODEL, "built").kind()).isEqualTo(FieldKind.TEXT);
    assertThat(field(Kind.MODEL, "zones").kind()).isEqualTo(FieldKind.NESTED);
    assertThat(field(Kind.SYMPTOM, "causes").kind()).isEqualTo(FieldKind.NESTED);
    assertThat(field(Kind.CAUTION, "do").kind()).isEqualTo(FieldKind.LIST);
    FieldDeclaration tools = field(Kind.PROCEDURE, "tools");
    assertThat(tools.kind()).isEqualTo(FieldKind.LIST);
    assertThat(tools.entries()).isEqualTo(FieldKind.NAME);
    assertThat(tools.names()).contains(Named.TOOL);
    assertThat(field(Kind.PROCEDURE, "zones").names()).contains(Named.ZONE);
  }

  private static FieldDeclaration field(Kind kind, String key) {
    return FieldDeclaration.of(kind).stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void saysWhatIsThereAndWhere() {
    HeaderForm form = form(PROCEDURE);
    assertThat(form.value("title")).contains(new Text("Grease it"));
    assertThat(form.value("resets")).contains(many("one", "two", "three"));
    assertThat(form.value("tools").orElseThrow()).isInstanceOf(Nested.class);
    assertThat(form.value("summary")).isEmpty();
    assertThat(form.unknown()).containsExactly("mine");
    FormField skill =
        form.fields().stream().filter(f -> f.key().equals("skill")).findFirst().orElseThrow();
    assertThat(skill.place().orElseThrow().of(PROCEDURE)).isEqualTo("'owner'");
  }

  @Test
  void aFieldAloneIsChanged() throws Unchangeable {
    assertThat(set(PROCEDURE, "title", new Text("Oil: it")))
        .isEqualTo(PROCEDURE.replace("Grease it #", "\"Oil: it\" #"));
    assertThat(set(PROCEDURE, "skill", new Text("yard")))
        .isEqualTo(PROCEDURE.replace("'owner'", "'yard'"));
    assertThat(set(PROCEDURE, "resets", many("one", "three")))
        .isEqualTo(PROCEDURE.replace("one, \"two\", three", "one, three"));
    assertThat(set(PROCEDURE, "resets", many("nought", "one", "2", "three", "four")))
        .isEqualTo(PROCEDURE.replace("one, \"two\", three", "nought, \"one\", 2, three, four"));
    assertThat(set(PROCEDURE, "sources", many("first", "second", "third")))
        .isEqualTo(PROCEDURE.replace("- second\r\n", "- second\r\n- third\r\n"));
    assertThat(set(PROCEDURE, "sources", many("second")))
        .isEqualTo(PROCEDURE.replace("- first\r\n", ""));
    assertThat(set(PROCEDURE, "summary", new Text("Twice a year.")))
        .isEqualTo(PROCEDURE.replace("# short\r\n", "# short\r\nsummary: Twice a year.\r\n"));
    assertThat(form(PROCEDURE).clear("work").page().text())
        .isEqualTo(PROCEDURE.replace("work: service\r\n", ""));
  }

  @Test
  void nestedFieldsAreEditedAsYaml() throws Unchangeable {
    Nested tools = (Nested) form(PROCEDURE).value("tools").orElseThrow();
    assertThat(tools.yaml())
        .isEqualTo("- ladle # the big one\n- {use: brush, fits: {use: charter}}");
    assertThat(set(PROCEDURE, "tools", new Nested(tools.yaml() + "\n- use: rag\n  fits: {}")))
        .isEqualTo(
            PROCEDURE.replace("charter}}\r\n", "charter}}\r\n  - use: rag\r\n    fits: {}\r\n"));
    assertThat(set(PROCEDURE, "look-for", new Nested("good: dry\nbad: wet")))
        .isEqualTo(
            PROCEDURE
                .replace("three]\r\n", "three]\r\n")
                .replace(
                    "charter}}\r\n", "charter}}\r\nlook-for:\r\n  good: dry\r\n  bad: wet\r\n"));
    assertThat(set(PROCEDURE, "fits", new Nested("{water: salt}")))
        .contains("\r\nfits: {water: salt}\r\n");
    assertThatThrownBy(() -> set(PROCEDURE, "tools", new Nested("- [oops")))
        .isInstanceOf(Unchangeable.class);
    assertThatThrownBy(() -> set(PROCEDURE, "fits", new Nested("water: salt\ntitle: x\n---\n")))
        .isInstanceOf(Unchangeable.class);
  }

  @Test
  void anEmptyHeaderAndEmptyKeysCanBeFilled() throws Unchangeable {
    assertThat(set("---\n---\nText\n", "title", new Text("One")))
        .isEqualTo("---\ntitle: One\n---\nText\n");
    assertThat(set("---\n# nothing yet\n---\n", "title", new Text("One")))
        .isEqualTo("---\n# nothing yet\ntitle: One\n---\n");
    assertThat(set("---\ntitle: A\nminutes: # how long\nskill:\n---\n", "minutes", new Text("5")))
        .isEqualTo("---\ntitle: A\nminutes: 5 # how long\nskill:\n---\n");
    assertThat(HeaderForm.of(Kind.TOPIC, new PageText("no header"))).isEmpty();
    assertThat(HeaderForm.of(Kind.TOPIC, new PageText("---\na: [\n---\n"))).isEmpty();
  }

  @Test
  void formAndTextStayInStep() throws Unchangeable {
    HeaderForm form = form(PROCEDURE);
    PageText typed = new PageText(PROCEDURE.replace("minutes: 20", "minutes: 25"));
    HeaderForm after = form.edited(typed).orElseThrow();
    assertThat(after.value("minutes")).contains(new Text("25"));
    assertThat(after.set("minutes", new Text("20")).page().text()).isEqualTo(PROCEDURE);
    assertThat(form.edited(new PageText("---\na: [\n---\n"))).isEmpty();
  }

  @Test
  void theWholeLibraryComesBackToTheByte() throws IOException, Unchangeable {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    List<String> wrong = new ArrayList<>();
    int fields = 0;
    int pages = 0;
    for (Page<?> page : new LibraryReader(folders).read().pages()) {
      byte[] bytes = Files.readAllBytes(folders.root().resolve(page.path()));
      PageText text = PageText.of(bytes);
      HeaderForm form = HeaderForm.of(page.kind(), text).orElseThrow();
      assertThat(form.unknown()).as(page.path()).isEmpty();
      HeaderForm same = form;
      boolean sample = pages++ % 8 == 0;
      for (FormField field : form.fields()) {
        if (field.value().isPresent()) {
          same = same.set(field.key(), field.value().get());
        }
        if (sample && field.value().isPresent()) {
          fields++;
          thereAndBack(form, field, bytes)
              .ifPresent(each -> wrong.add(page.path() + " " + field.key() + ": " + each));
        }
      }
      assertThat(same.page().bytes()).as(page.path()).isEqualTo(bytes);
    }
    assertThat(wrong).isEmpty();
    assertThat(fields).isGreaterThan(300);
  }

  /** Sets a field to something else and back. */
  private static Optional<String> thereAndBack(HeaderForm form, FormField field, byte[] bytes) {
    FieldValue was = field.value().orElseThrow();
    FieldValue other =
        was instanceof Text text
            ? new Text(text.text() + ": \"other\"")
            : was instanceof Many list
                ? new Many(
                    java.util.stream.Stream.concat(
                            list.entries().stream().skip(1), java.util.stream.Stream.of("other"))
                        .toList())
                : new Nested("a: 1");
    try {
      HeaderForm there = form.set(field.key(), other);
      if (there.page().equals(form.page())) {
        return Optional.of("was not changed");
      }
      HeaderForm back = there.set(field.key(), was);
      return java.util.Arrays.equals(back.page().bytes(), bytes)
          ? Optional.empty()
          : Optional.of("did not come back");
    } catch (Unchangeable e) {
      return Optional.of(e.getMessage());
    }
  }
}
