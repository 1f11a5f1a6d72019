package limberboard.workings.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of wrong {@code workings} keys: file, line, key, and what would be right. */
class SumUseCheckTest {
  @TempDir Path folder;

  @BeforeEach
  void writeModel() {
    write(
        "models/plover-20.md",
        """
        ---
        title: Plover 20
        built: 2010/2020
        drawing: {profile: ../pictures/side.svg, deck: ../pictures/top.svg}
        zones: [{id: cabin, title: Cabin, deck: "0,0 10,0 10,10"}]
        equipment: []
        measures: {gasket: 2.4 m, tank: 40 l}
        ---
        """);
    write("pictures/side.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>");
    write("pictures/top.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>");
  }

  @Test
  void saysNothingOfGoodOnes() {
    assertThat(
            said(
                "{use: sealant-bead, with: {length: gasket, width: 8 mm}}",
                "{use: hole-inflow, title: A hole, with: {edge: pipe, depth: 40 cm}}",
                "{use: oil-viscosity, with: {coldest: -5 °C}}",
                "{use: sealant-bead, with: {length: {measure: gasket, times: 1.3}}}"))
        .isEmpty();
  }

  @Test
  void namesTheWorkingThatIsMeant() {
    assertThat(said("{use: hole-inflo}"))
        .containsExactly(
            "articles/topics/a.md:4: workings[1].use: there is no working \"hole-inflo\"; did you"
                + " mean \"hole-inflow\"?");
  }

  @Test
  void namesTheInputThatIsMeant() {
    assertThat(said("{use: hole-inflow}", "{use: hole-inflow, with: {dept: 1 m}}"))
        .containsExactly(
            "articles/topics/a.md:5: workings[2].with.dept: is no input of hole-inflow; did you"
                + " mean \"depth\"?");
  }

  @Test
  void refusesUnitsThatCannotBeConverted() {
    assertThat(said("{use: hole-inflow, with: {depth: 3 kg}}"))
        .containsExactly(
            "articles/topics/a.md:4: workings[1].with.depth: 3 kg cannot be converted; write it"
                + " such as 0.5 m");
    assertThat(said("{use: hole-inflow, with: {depth: tank}}"))
        .containsExactly(
            "articles/topics/a.md:4: workings[1].with.depth: 40 l cannot be converted; write it"
                + " such as 0.5 m");
  }

  @Test
  void refusesWhatLiesBeyondReckoning() {
    assertThat(said("{use: hole-inflow, with: {depth: 3000 m}}"))
        .containsExactly(
            "articles/topics/a.md:4: workings[1].with.depth: 3000 m cannot be computed; it is 0.001"
                + " m to 100 m");
  }

  @Test
  void refusesUnknownWordsAndMeasures() {
    assertThat(said("{use: hole-inflow, with: {edge: pip, depth: gaskt}}"))
        .containsExactly(
            "articles/topics/a.md:4: workings[1].with.edge: \"pip\" cannot be chosen here; did you"
                + " mean \"pipe\"?",
            "articles/topics/a.md:4: workings[1].with.depth: no model has the measure \"gaskt\";"
                + " did you mean \"gasket\"?");
    assertThat(said("{use: hole-inflow, with: {edge: 3 mm}}"))
        .containsExactly(
            "articles/topics/a.md:4: workings[1].with.edge: is a quantity here; choose sharp, pipe,"
                + " rounded");
  }

  @Test
  void refusesHostileHeaders() {
    assertThat(said("{use: hole-inflow, with: [1, 2]}")).isNotEmpty();
    assertThat(said("{use: hole-inflow, with: {depth: {measure: gasket, times: -1}}}"))
        .isNotEmpty();
    assertThat(said("hole-inflow")).isNotEmpty();
    assertThat(said("{use: hole-inflow, with: {depth: -3 m}}")).isNotEmpty();
    assertThat(said("{use: hole-inflow, fits: {model: nobody}}")).isNotEmpty();
    assertThat(said("{with: {depth: 1 m}}")).isNotEmpty();
  }

  private List<String> said(String... workings) {
    StringBuilder page = new StringBuilder("---\ntitle: A\nworkings:\n");
    for (String working : workings) {
      page.append("  - ").append(working).append('\n');
    }
    write("topics/a.md", page + "---\n\nText.\n");
    SumUseCheck check = new SumUseCheck(Sums.ofTheTrade());
    try {
      return new LibraryReader(new WorkspaceFolders(folder), List.of(check))
          .read().problems().stream().map(Object::toString).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(String file, String text) {
    try {
      Path path = folder.resolve("articles").resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
