package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import limberboard.boat.BoatWriter.Clash;
import limberboard.boat.BoatWriter.Refused;
import limberboard.boat.BoatWriter.Saved;
import limberboard.library.TestWorkspace;
import limberboard.library.value.Use;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A boat's file is changed key by key, and nothing that somebody wrote into it is lost. */
class BoatWriterTest {
  private static final String TEXT =
      """
      # our own boat
      name: 'Knot'   # after the bird
      model: plover-20

      hull: 17
      built: 2014
      # ask him about this
      sail-number: 4711
      equipment:
        # fitted by us
        seal: seal-lip  # 2019
      note: |
        first line
        second line
      """;

  @TempDir Path folder;
  private TestWorkspace workspace;
  private BoatWriter writer;
  private Path file;

  @BeforeEach
  void prepare() {
    workspace = new TestWorkspace(folder);
    file = workspace.write("boats/knot/boat.yaml", TEXT);
    writer = new BoatWriter(workspace.folders());
  }

  private Boat read() throws IOException {
    return new WorkspaceReader(workspace.folders()).read().boat("knot").orElseThrow();
  }

  /** What of a boat a test changes. */
  private record Change(
      Optional<String> name,
      Optional<Use> use,
      Optional<String> seal,
      Optional<String> note,
      Optional<Season> season) {
    static final Change NONE =
        new Change(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    Boat on(Boat boat) {
      Map<String, String> equipment = new LinkedHashMap<>(boat.equipment());
      seal.ifPresent(choice -> equipment.put("seal", choice));
      return new Boat(
          boat.id(),
          name.orElse(boat.name()),
          boat.model(),
          boat.hull(),
          boat.built(),
          boat.launched(),
          use.orElse(boat.use()),
          boat.water(),
          boat.exposure(),
          equipment,
          season.isPresent() ? season : boat.season(),
          note.orElse(boat.note()),
          boat.log());
    }
  }

  private static Change name(String name) {
    return new Change(
        Optional.of(name), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static Change seal(String seal) {
    return new Change(
        Optional.empty(), Optional.empty(), Optional.of(seal), Optional.empty(), Optional.empty());
  }

  private static Change note(String note) {
    return new Change(
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(note), Optional.empty());
  }

  private void becomes(Change change, UnaryOperator<String> text) throws IOException {
    String before = Files.readString(file);
    Boat base = read();
    assertThat(writer.save(workspace.library(), base, change.on(base)))
        .isEqualTo(new Saved(change.on(base)));
    assertThat(Files.readString(file)).isEqualTo(text.apply(before));
    assertThat(read()).isEqualTo(change.on(base));
  }

  @Test
  void onlyTheValueThatWasChangedIsWritten() throws IOException {
    becomes(name("Red 'Knot'"), text -> text.replace("'Knot'", "'Red ''Knot'''"));
  }

  @Test
  void aChoiceKeepsItsCommentAndOneAsTheYardFittedItGoes() throws IOException {
    becomes(
        seal("seal-packed"),
        text -> text.replace("equipment:\n  # fitted by us\n  seal: seal-lip  # 2019\n", ""));
  }

  @Test
  void aNewKeyIsPutWhereItBelongs() throws IOException {
    becomes(
        new Change(
            Optional.empty(),
            Optional.of(Use.CHARTER),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Season(MonthDay.of(4, 15), MonthDay.of(10, 15)))),
        text ->
            text.replace("built: 2014\n", "built: 2014\nuse: charter\n")
                .replace(
                    "seal-lip  # 2019\n",
                    "seal-lip  # 2019\nseason: {from: \"--04-15\", to: \"--10-15\"}\n"));
  }

  @Test
  void blanksAndARemarkBehindANoteNeverBecomePartOfIt() throws IOException {
    for (String behind : List.of("  ", "   # seen in May")) {
      Files.writeString(
          file, Files.readString(file).replaceAll("(?s)note: .*", "note: a" + behind + "\n"));
      Boat base = read();
      assertThat(base.note()).isEqualTo("a");
      assertThat(writer.save(workspace.library(), base, note("two\nlines").on(base)))
          .isInstanceOf(BoatWriter.Saved.class);
      assertThat(read().note()).isEqualTo("two\nlines");
      assertThat(Files.readString(file)).contains(behind.strip());
    }
  }

  @Test
  void aNoteOfSeveralLinesStaysOne() throws IOException {
    becomes(
        note("first line\n\nthird: line # no comment"),
        text ->
            text.replace(
                "|\n  first line\n  second line",
                "|-\n  first line\n\n  third: line # no comment"));
  }

  @Test
  void lineEndsAndByteOrderMarkStay() throws IOException {
    Files.writeString(file, "\uFEFF" + TEXT.replace("\n", "\r\n"));
    becomes(note("x"), text -> text.replace("|\r\n  first line\r\n  second line", "x"));
  }

  @Test
  void aFileInOneLineIsChangedInPlaceToo() throws IOException {
    Files.writeString(file, "{name: Knot, model: plover-20, hull: 17, built: 2014} # short\n");
    becomes(seal("seal-lip"), text -> text.replace("2014}", "2014, equipment: {seal: seal-lip}}"));
    becomes(name("A: b"), text -> text.replace("name: Knot", "name: \"A: b\""));
    becomes(seal("seal-packed"), text -> text.replace(", equipment: {seal: seal-lip}", ""));
  }

  @Test
  void whatAnotherWroteMeanwhileStays() throws IOException {
    Boat base = read();
    Files.writeString(file, TEXT.replace("hull: 17", "hull: 18 # corrected"));
    Boat saved = ((Saved) writer.save(workspace.library(), base, name("Ruff").on(base))).boat();
    assertThat(saved.hull()).isEqualTo(18);
    assertThat(saved.name()).isEqualTo("Ruff");
    assertThat(Files.readString(file))
        .isEqualTo(TEXT.replace("hull: 17", "hull: 18 # corrected").replace("'Knot'", "'Ruff'"));
  }

  @Test
  void whereBothChangedTheSameNothingIsWrittenAndBothAreTold() throws IOException {
    Boat base = read();
    String others = TEXT.replace("'Knot'", "Dunnock").replace("second", "another");
    Files.writeString(file, others);
    Clash clash = (Clash) writer.save(workspace.library(), base, name("Ruff").on(base));
    assertThat(clash.keys()).containsExactly("name");
    assertThat(clash.theirs().name()).isEqualTo("Dunnock");
    assertThat(clash.merged().name()).isEqualTo("Ruff");
    assertThat(clash.merged().note()).contains("another");
    assertThat(Files.readString(file)).isEqualTo(others);
    writer.save(workspace.library(), clash.theirs(), clash.merged());
    assertThat(Files.readString(file)).isEqualTo(others.replace("Dunnock", "Ruff"));
  }

  @Test
  void aFileThatCannotBeReadIsNotOverwritten() throws IOException {
    Boat base = read();
    for (String broken : List.of("name: [Knot\n", "name: Knot\nhull: 17\nbuilt: 2014\n")) {
      Files.writeString(file, broken);
      Refused refused = (Refused) writer.save(workspace.library(), base, name("Ruff").on(base));
      assertThat(refused.problem().right()).contains("nothing was written");
      assertThat(Files.readString(file)).isEqualTo(broken);
    }
    Files.delete(file);
    assertThat(writer.save(workspace.library(), base, name("Ruff").on(base)))
        .isInstanceOf(Refused.class);
    assertThat(file).doesNotExist();
  }

  @Test
  void aMistakeElsewhereInTheFileIsLeftAsItIs() throws IOException {
    Files.writeString(file, TEXT.replace("hull: 17", "hull: 17\nwater: sweet"));
    becomes(name("Ruff"), text -> text.replace("'Knot'", "'Ruff'"));
  }

  @Test
  void aNewBoatTouchesNoFolderThatIsThere() throws IOException {
    Path broken = workspace.write("boats/ruff/boat.yaml", "name: [Ruff\n");
    Path lone = workspace.write("boats/ruff-2/log.csv", "date,work,engine-hours,note\n");
    Boat ruff = name("Ruff").on(read()).named("ruff").with(List.of());
    Saved saved = (Saved) writer.create(workspace.library(), ruff);
    assertThat(saved.boat().id()).isEqualTo("ruff-3");
    assertThat(broken).hasContent("name: [Ruff");
    assertThat(lone.resolveSibling("boat.yaml")).doesNotExist();
    assertThat(folder.resolve("boats/ruff-3/boat.yaml"))
        .hasContent(
            "name: Ruff\nmodel: plover-20\nhull: 17\nbuilt: 2014\nequipment:\n  seal: seal-lip\n"
                + "note: \"first line\\nsecond line\\n\"");
  }

  @Test
  void nothingIsLeftOfANewBoatThatCannotBeWritten() throws IOException {
    Boat nameless = name(" ").on(read()).named("ruff").with(List.of());
    assertThat(writer.create(workspace.library(), nameless)).isInstanceOf(Refused.class);
    try (Stream<Path> boats = Files.list(folder.resolve("boats"))) {
      assertThat(boats.map(each -> each.getFileName().toString())).containsExactly("knot");
    }
  }
}
