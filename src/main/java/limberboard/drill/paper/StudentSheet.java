package limberboard.drill.paper;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.drill.Drill;
import limberboard.drill.paper.PaperPack.Numbered;
import limberboard.library.page.Kind;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * What a student gets: the letter, the boat with her drawing, everything that can be done with its
 * number and minutes, room to write down what was done. Nothing of what is hidden. Immutable.
 *
 * @param pack the pack
 */
public record StudentSheet(PaperPack pack) {
  private static final int LINES = 12;
  private static final int LETTERS = 26;

  /**
   * A sheet.
   *
   * @param number from 1
   */
  public CutPage of(int number) {
    return of(number, number);
  }

  /**
   * A sheet of a course.
   *
   * @param number from 1, as the pack counts
   * @param called the number that stands on it
   */
  CutPage of(int number, int called) {
    Drill drill = pack.drills().get(number - 1);
    List<Part> parts = new ArrayList<>();
    List<WorkCaution> cautions = drill.cautions();
    Cautions.inShort(cautions).ifPresent(parts::add);
    parts.add(
        new Part(
            Part.Role.BODY,
            "What the owner writes",
            drill.letter().stream().<Block>map(Block.Paragraph::of).toList()));
    parts.add(boat());
    parts.add(new Part(Part.Role.CHECKS, "What you can do", checks()));
    parts.add(new Part(Part.Role.WORK, "What you did", List.of(room())));
    parts.add(new Part(Part.Role.BODY, "The boat from the side", List.of(drawing())));
    Cautions.inFull(cautions).ifPresent(parts::add);
    return new CutPage(
        "sheet-" + called,
        Kind.TOPIC,
        CutPage.LIST,
        "Sheet " + called + ": " + pack.fault().page().title(),
        "Say a number; the trainer tells what you find. There is one fault.",
        PageCutter.cutFor(pack.fault().fitting().boat()),
        parts);
  }

  private Part boat() {
    Boat boat = pack.fault().fitting().boat();
    Page<Model> model = boat.model();
    List<Block> blocks = new ArrayList<>();
    String fitted =
        String.join(
            ", ",
            model.details().equipment().stream()
                .flatMap(each -> each.choices().stream())
                .filter(choice -> boat.has(choice.id()))
                .map(choice -> Sentences.lowered(choice.title()))
                .toList());
    blocks.add(
        new Block.Facts(
            List.of(
                Block.Fact.of("Boat", boat.name() + ", " + model.title() + " of " + boat.built()),
                Block.Fact.of(
                    "Lies", boat.water().spoken() + " water, " + boat.use().spoken() + " use"),
                Block.Fact.of("Fitted", fitted))));
    return new Part(Part.Role.FACTS, "The boat", blocks);
  }

  private Block drawing() {
    Page<Model> model = pack.fault().fitting().boat().model();
    String profile = "articles/models/" + model.details().drawing().profile();
    String path = Path.of(profile).normalize().toString().replace('\\', '/');
    return new Block.Paragraph(
        List.of(new Inline.Picture(path, model.title() + ", seen from the side")));
  }

  private List<Block> checks() {
    List<List<List<Inline>>> rows = new ArrayList<>();
    boolean mends = false;
    for (Numbered each : pack.numbers()) {
      if (each.cause().isPresent() && !mends) {
        mends = true;
        rows.add(List.of(Inline.text("Mends: say how sure you are that it is this, in per cent")));
      }
      rows.add(
          PaperWords.row(
              Integer.toString(each.number()),
              PaperWords.what(each),
              PaperWords.minutes(each),
              open(PaperWords.access(each)),
              cautions(each)));
    }
    rows.add(
        PaperWords.row(
            "yard",
            "Hand it over, and name the number of the mend that you think it needs",
            Minutes.words(pack.fault().yardMinutes())
                + ", "
                + Minutes.words(pack.fault().searchMinutes())
                + " more if it is another",
            "",
            ""));
    List<Block> blocks = new ArrayList<>();
    blocks.add(PaperWords.table(List.of("No.", "What", "Takes", "Open", "Cautions"), rows));
    if (!pack.fault().access().isEmpty()) {
      blocks.add(
          Block.Paragraph.of(
              "Opening takes its time once: "
                  + String.join(
                      "; ",
                      pack.fault().access().stream()
                          .map(
                              each ->
                                  letter(each)
                                      + " "
                                      + each.title()
                                      + " "
                                      + Minutes.words(each.minutes()))
                          .toList())
                  + "."));
    }
    return blocks;
  }

  private String open(List<Access> access) {
    return String.join(" ", access.stream().map(this::letter).toList());
  }

  private String letter(Access access) {
    List<String> ids = pack.fault().access().stream().map(Access::id).toList();
    int number = ids.indexOf(access.id());
    String last = Character.toString('A' + number % LETTERS);
    return number < LETTERS ? last : Character.toString('A' + number / LETTERS - 1) + last;
  }

  private static String cautions(Numbered each) {
    List<WorkCaution> cautions =
        each.check()
            .map(check -> check.cautions())
            .orElseGet(() -> each.cause().orElseThrow().mendCautions());
    return String.join(", ", cautions.stream().map(WorkCaution::title).distinct().toList());
  }

  private static Block room() {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (int line = 1; line <= LINES; line++) {
      rows.add(PaperWords.row(Integer.toString(line), " ", " ", " ", " "));
    }
    return PaperWords.table(
        List.of("Step", "Caution taken first", "No.", "What you found", "Minutes, or how sure"),
        rows);
  }
}
