package limberboard.library.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.header.YamlText.Unchangeable;
import org.junit.jupiter.api.Test;

/** Values at any depth are changed in their place. */
class NestedYamlTest {
  private static final String YAML =
      """
      # the page
      causes:
        - id: seal # worn
          weight: 3
          mend:

        # the second
        - {id: hatch, weight: '2'}
      checks:
        - id: taste
          finds:
            salt: {seal: often}
      """;

  private static Map<String, String> entry() {
    Map<String, String> entry = new LinkedHashMap<>();
    entry.put("id", "new");
    entry.put("mend", "");
    return entry;
  }

  @Test
  void replacesOneValueAndNothingElse() throws Unchangeable {
    assertThat(new NestedYaml(YAML).with(List.of("causes", "0", "weight"), "6"))
        .isEqualTo(YAML.replace("weight: 3", "weight: 6"));
    assertThat(new NestedYaml(YAML).with(List.of("causes", "0", "mend"), "bed"))
        .isEqualTo(YAML.replace("mend:\n", "mend: bed\n"));
  }

  @Test
  void putsInWhatIsNotThereYet() throws Unchangeable {
    assertThat(new NestedYaml(YAML).with(List.of("checks", "0", "finds", "salt", "hatch"), "never"))
        .isEqualTo(YAML.replace("{seal: often}", "{seal: often, hatch: never}"));
    assertThat(new NestedYaml(YAML).with(List.of("checks", "0", "finds", "fresh", "hatch"), "even"))
        .isEqualTo(YAML + "      fresh: {hatch: even}\n");
    assertThat(
            new NestedYaml("checks:\n- id: a\n")
                .with(List.of("checks", "0", "finds", "x", "z"), "1"))
        .isEqualTo("checks:\n- id: a\n  finds:\n    x: {z: 1}\n");
    assertThat(
            new NestedYaml("checks: [{id: a}]\n")
                .with(List.of("checks", "0", "finds", "x", "z"), "1"))
        .isEqualTo("checks: [{id: a, finds: {x: {z: 1}}}]\n");
  }

  @Test
  void takesOutAKeyAndWhatIsThenEmpty() throws Unchangeable {
    assertThat(new NestedYaml(YAML).without(List.of("checks", "0", "finds", "salt", "seal")))
        .isEqualTo(YAML.replace("    finds:\n      salt: {seal: often}\n", ""));
    assertThat(new NestedYaml(YAML).without(List.of("causes", "1", "weight")))
        .isEqualTo(YAML.replace(", weight: '2'", ""));
    assertThat(new NestedYaml(YAML).without(List.of("causes", "7", "weight"))).isEqualTo(YAML);
  }

  @Test
  void addsAndRemovesEntries() throws Unchangeable {
    String block = "a:\n  - id: x\n    b: 1\n  # end\n";
    assertThat(new NestedYaml(block).withEntry(List.of("a"), entry()))
        .isEqualTo("a:\n  - id: x\n    b: 1\n  - id: new\n    mend:\n  # end\n");
    assertThat(new NestedYaml("a: []\nb: 1\n").withEntry(List.of("a"), entry()))
        .isEqualTo("a:\n  - id: new\n    mend:\nb: 1\n");
    assertThat(new NestedYaml("b: 1\n").withEntry(List.of("a"), Map.of("id", "new")))
        .isEqualTo("b: 1\na: [{id: new}]\n");
    assertThat(new NestedYaml("a: [{id: x}]\r\n").withEntry(List.of("a"), Map.of("id", "new")))
        .isEqualTo("a: [{id: x}, {id: new}]\r\n");
    assertThat(new NestedYaml(YAML).withoutEntry(List.of("causes"), 1))
        .isEqualTo(YAML.replace("  - {id: hatch, weight: '2'}\n", ""));
    assertThat(new NestedYaml("a:\n- id: x\nb: 1\n").withoutEntry(List.of("a"), 0))
        .isEqualTo("a:\n  []\nb: 1\n");
  }

  @Test
  void renamesAKey() throws Unchangeable {
    assertThat(new NestedYaml(YAML).renamed(List.of("checks", "0", "finds", "salt"), "salty"))
        .isEqualTo(YAML.replace("salt:", "salty:"));
  }

  @Test
  void refusesWhatIsNoList() {
    assertThatThrownBy(() -> new NestedYaml("a: b\n").withEntry(List.of("a"), entry()))
        .isInstanceOf(Unchangeable.class);
    assertThatThrownBy(() -> new NestedYaml("a: [\n")).isInstanceOf(Unchangeable.class);
    assertThatThrownBy(() -> new NestedYaml("a:\n  - b\n").withoutEntry(List.of("a"), 3))
        .isInstanceOf(Unchangeable.class);
  }
}
