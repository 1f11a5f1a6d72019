package limberboard.print.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.picture.PictureSafety;
import limberboard.print.drawing.TimeLineLayout.Placed;
import limberboard.print.pdf.StrictXml;
import limberboard.upkeep.Due;
import limberboard.upkeep.Planned;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.TimeLine.Group;
import limberboard.upkeep.TimeLine.Row;
import limberboard.upkeep.TimeLine.Run;
import limberboard.upkeep.TimeLine.Season;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.WorkId;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NodeList;

/** The time lines of the demo's boats, in winter and in summer. */
class TimeLineTest {
  private static final List<LocalDate> DAYS =
      List.of(LocalDate.of(2026, 3, 15), LocalDate.of(2026, 7, 10), LocalDate.of(2026, 11, 25));
  private static final int SEASONS = 3;
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static Stream<Upkeep> all() {
    return workspace.boats().stream().flatMap(boat -> DAYS.stream().map(day -> upkeep(boat, day)));
  }

  private static Upkeep upkeep(Boat boat, LocalDate day) {
    return Upkeep.of(workspace.library(), new Fitting(boat, day));
  }

  @Test
  void everythingThatIsPlannedStandsOnItAsOftenAsItComes() {
    assertThat(all()).hasSizeGreaterThan(10);
    all()
        .forEach(
            upkeep -> {
              Map<String, Integer> planned =
                  upkeep.forecast(SEASONS).stream()
                      .collect(Collectors.toMap(Planned::id, each -> 1, Integer::sum));
              Map<String, Integer> shown =
                  TimeLine.of(upkeep, SEASONS).rows().stream()
                      .filter(row -> times(row) > 0)
                      .collect(Collectors.toMap(row -> row.which().text(), TimeLineTest::times));
              assertThat(shown).isEqualTo(planned).isNotEmpty();
            });
  }

  private static int times(Row row) {
    return row.days().size() + row.runs().stream().mapToInt(Run::times).sum();
  }

  @Test
  void totalsOfSeasonsAreThoseOfTheForecast() {
    all()
        .forEach(
            upkeep -> {
              List<Season> seasons = TimeLine.of(upkeep, SEASONS).seasons();
              List<Planned> planned = upkeep.forecast(SEASONS);
              assertThat(seasons).hasSize(SEASONS);
              assertThat(seasons.stream().mapToInt(Season::jobs).sum()).isEqualTo(planned.size());
              assertThat(seasons.stream().mapToInt(Season::minutes).sum())
                  .isEqualTo(planned.stream().mapToInt(Planned::ownerMinutes).sum());
            });
  }

  @Test
  void whatIsOverdueAndWhatTheLogDoesNotTellIsSaidInWords() {
    all()
        .forEach(
            upkeep -> {
              List<Row> rows = TimeLine.of(upkeep, SEASONS).rows();
              List<Due> over =
                  upkeep.all().stream().filter(due -> due.isOver(upkeep.fitting().on())).toList();
              assertThat(rows)
                  .filteredOn(Row::overdue)
                  .allSatisfy(row -> assertThat(row.note()).startsWith("overdue"))
                  .extracting(row -> row.which().text())
                  .isSubsetOf(over.stream().map(Due::id).toList())
                  .containsAll(
                      over.stream().filter(due -> !isReset(due, over)).map(Due::id).toList());
              assertThat(rows)
                  .filteredOn(row -> times(row) == 0)
                  .allSatisfy(row -> assertThat(row.note()).isEqualTo("the log does not tell"))
                  .extracting(row -> row.which().text())
                  .containsExactlyInAnyOrderElementsOf(
                      upkeep.of(Due.Group.UNKNOWN).stream().map(Due::id).toList());
            });
  }

  /** Whether other overdue work starts its interval anew, so that it need not come at all. */
  private static boolean isReset(Due due, List<Due> over) {
    return over.stream()
        .anyMatch(other -> other.work().details().resets().contains(due.work().id()));
  }

  @Test
  void whatComesEveryMonthIsABarWithItsRhythm() {
    TimeLine line =
        TimeLine.of(upkeep(workspace.boat("dunlin").orElseThrow(), DAYS.get(2)), SEASONS);
    Row drains =
        line.rows().stream()
            .filter(row -> row.which().procedure().equals("clear-cockpit-drains"))
            .findFirst()
            .orElseThrow();
    assertThat(drains.days()).isEmpty();
    assertThat(drains.runs()).hasSize(SEASONS);
    assertThat(drains.note()).contains("every month afloat");
    assertThat(TimeLineWords.when(drains)).contains("times in 2027");
  }

  @Test
  void aLookAgainFollowsTheWorkItBelongsTo() {
    TimeLine line =
        TimeLine.of(upkeep(workspace.boat("dunlin").orElseThrow(), DAYS.get(2)), SEASONS);
    for (Group group : line.groups()) {
      List<WorkId> ids = group.rows().stream().map(Row::which).toList();
      for (WorkId id : ids) {
        WorkId again = new WorkId(id.procedure(), true);
        if (!id.again() && ids.contains(again)) {
          assertThat(ids.indexOf(again)).isEqualTo(ids.indexOf(id) + 1);
        }
      }
    }
  }

  @Test
  void textIsNeitherCutOffNorOverAnotherOne() {
    for (TimeLineStyle style : List.of(TimeLineStyle.WIDE, TimeLineStyle.PAPER)) {
      all()
          .map(upkeep -> TimeLine.of(upkeep, SEASONS))
          .forEach(line -> clear(new TimeLineLayout(line, line.groups(), style), style));
    }
  }

  private static void clear(TimeLineLayout placed, TimeLineStyle style) {
    List<Placed> texts = placed.texts();
    assertThat(texts).hasSizeGreaterThan(5);
    assertThat(texts)
        .allSatisfy(
            text -> {
              assertThat(text.x()).isNotNegative();
              assertThat(right(text)).isLessThanOrEqualTo(style.width());
              assertThat(text.y() + text.line().height()).isLessThanOrEqualTo(placed.height());
              if (text.x() < style.title()) {
                assertThat(right(text)).isLessThanOrEqualTo(style.title());
              } else if (text.x() < style.axis()) {
                assertThat(right(text)).isLessThanOrEqualTo(style.axis());
              }
            });
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        assertThat(overlap(texts.get(i), texts.get(j)))
            .as("%s and %s", texts.get(i), texts.get(j))
            .isFalse();
      }
    }
    assertThat(placed.marks())
        .allSatisfy(
            mark -> {
              assertThat(mark.x()).isBetween(style.axis(), style.width());
              assertThat(mark.y()).isBetween(placed.headBottom(), placed.height());
            });
    assertThat(placed.bars())
        .allSatisfy(
            bar -> {
              assertThat(bar.getX()).isGreaterThanOrEqualTo(style.axis());
              assertThat(bar.getMaxX()).isLessThanOrEqualTo(style.width());
            });
  }

  private static double right(Placed text) {
    return text.x() + text.line().width();
  }

  private static boolean overlap(Placed one, Placed other) {
    boolean across = one.x() < right(other) && other.x() < right(one);
    boolean upright =
        one.y() < other.y() + other.line().size() && other.y() < one.y() + one.line().size();
    return across && upright;
  }

  @Test
  void drawingsAreWellFormedSafeAndTellEveryPieceOfWork() throws IOException {
    for (Upkeep upkeep : all().toList()) {
      TimeLine line = TimeLine.of(upkeep, SEASONS);
      String svg = TimeLineDrawing.whole(line);
      assertThat(
              PictureSafety.wrong(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))))
          .isEmpty();
      String words = words(svg);
      for (Row row : line.rows()) {
        assertThat(words).contains(row.title().replaceAll("\\s+", ""));
      }
      long marks = line.rows().stream().mapToLong(row -> row.days().size()).sum();
      assertThat(svg.split("class=\"(?:planned|overdue)\"", -1)).hasSize((int) marks + 1);
    }
  }

  /** All text of a drawing without white space, since titles are broken into lines. */
  private static String words(String svg) throws IOException {
    NodeList texts = StrictXml.parse(svg).getElementsByTagName("text");
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < texts.getLength(); i++) {
      all.append(texts.item(i).getTextContent());
    }
    return all.toString().replaceAll("\\s+", "");
  }

  @Test
  void sheetsOfPaperHoldEveryRowOnceAndEachFits() {
    TimeLineStyle style = TimeLineStyle.PAPER;
    all()
        .map(upkeep -> TimeLine.of(upkeep, SEASONS))
        .forEach(
            line -> {
              List<List<Group>> sheets = TimeLineDrawing.divided(line, style, 0);
              List<Row> rows = new ArrayList<>();
              for (List<Group> sheet : sheets) {
                sheet.forEach(group -> rows.addAll(group.rows()));
                assertThat(new TimeLineLayout(line, sheet, style).height())
                    .isLessThanOrEqualTo(TreeDrawing.PAPER_HEIGHT);
              }
              assertThat(rows).isEqualTo(line.rows());
            });
  }

  @Test
  void aBoatWithoutAnyWorkHasAnEmptyTimeLine() throws IOException {
    Boat boat = workspace.boat("dunlin").orElseThrow();
    Upkeep nothing = Upkeep.of(limberboard.library.Library.empty(), new Fitting(boat, DAYS.get(0)));
    TimeLine line = TimeLine.of(nothing, SEASONS);
    assertThat(line.rows()).isEmpty();
    assertThat(line.seasons()).extracting(Season::jobs).containsOnly(0);
    assertThat(StrictXml.parse(TimeLineDrawing.whole(line)).getDocumentElement().getTagName())
        .isEqualTo("svg");
    assertThat(TimeLineDrawing.sheets(line, 0)).isEmpty();
  }
}
