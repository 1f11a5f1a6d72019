package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Skill;
import limberboard.print.PdfText;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.InlineText;
import limberboard.print.text.PlainText;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkList;
import limberboard.upkeep.list.WorkListMaker;
import limberboard.upkeep.list.Works;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists on paper, in a terminal and as CSV; the PDF is read back with another library. */
class WorkListSheetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 15);

  private static WorkspaceFolders folders;
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
  }

  private static WorkList list(String boat, ListKind kind) {
    Fitting fitting = new Fitting(workspace.boat(boat).orElseThrow(), DAY);
    return new WorkListMaker(fitting)
        .list(kind, Works.everything(workspace.library(), fitting, kind));
  }

  private static Stream<WorkList> all() {
    return workspace.boats().stream()
        .map(Boat::id)
        .flatMap(boat -> Stream.of(ListKind.values()).map(kind -> list(boat, kind)));
  }

  private static String name(WorkList list) {
    return list.fitting().boat().id() + " " + list.kind().word();
  }

  private static PrintedSheets printed(WorkList list) throws IOException {
    return new PrintedSheets(new WorkListSheet(workspace.library()).onPaper(list), folders);
  }

  @TestFactory
  Stream<DynamicTest> everyLineStandsOnceAndUndividedOnPaper() {
    return all()
        .map(
            list ->
                DynamicTest.dynamicTest(
                    name(list),
                    () -> {
                      PrintedSheets printed = printed(list);
                      List<String> pages = printed.pages(WorkListSheetTest::dense);
                      assertThat(printed.small()).isEmpty();
                      assertThat(pages.size()).isBetween(1, 3 + (int) list.lines().count() / 20);
                      for (ListLine line : list.lines().toList()) {
                        String heading = dense(line.number() + line.work().title());
                        assertThat(pages)
                            .filteredOn(page -> page.contains(heading))
                            .as(heading)
                            .singleElement()
                            .asString()
                            .containsPattern(
                                Pattern.quote(heading) + ".*" + Pattern.quote(lastWord(line)));
                      }
                      int last = pages.size();
                      for (int page = 1; page <= last; page++) {
                        assertThat(pages.get(page - 1))
                            .contains(dense("Page " + page + " of " + last));
                      }
                    }));
  }

  @ParameterizedTest
  @CsvSource({"whimbrel, 2026-03-15", "whimbrel, 2026-11-25", "redshank, 2026-03-15"})
  void theYearlyListOfATarnwick26IsTwoToFourSheets(String boat, LocalDate on) throws IOException {
    Fitting fitting = new Fitting(workspace.boat(boat).orElseThrow(), on);
    ListWork work = new ListWork(Upkeep.of(workspace.library(), fitting));
    WorkList list =
        new WorkListMaker(fitting)
            .list(
                ListKind.FITTING_OUT,
                work.due(ListKind.FITTING_OUT, work.season(ListKind.FITTING_OUT)));
    assertThat(list.lines().mapToInt(line -> line.task().pages().size()).sum())
        .isGreaterThanOrEqualTo(45);
    assertThat(printed(list).pages(WorkListSheetTest::dense)).hasSizeBetween(2, 4);
  }

  private static String lastWord(ListLine line) {
    String[] words = PdfText.flat(line.work().details().lookFor().orElseThrow().bad()).split(" ");
    return dense(words[words.length - 1]);
  }

  /** Without white space, since a line may be broken behind any hyphen. */
  private static String dense(String text) {
    return text.replaceAll("[\\s\\u00A0]+", "");
  }

  @TestFactory
  Stream<DynamicTest> cautionsStandAtTheirLinesAndEachOnceAtTheEnd() {
    return all()
        .map(
            list ->
                DynamicTest.dynamicTest(
                    name(list),
                    () -> {
                      WorkListSheet sheets = new WorkListSheet(workspace.library());
                      CutPage full = sheets.of(list);
                      CutPage paper = sheets.onPaper(list);
                      WorkCautions known = WorkCautions.on(workspace.library(), list.fitting());
                      List<String> all =
                          WorkCautions.joined(
                                  list.lines().map(line -> known.of(line.work())).toList())
                              .stream()
                              .map(WorkCaution::id)
                              .toList();
                      assertThat(full.cautions())
                          .extracting(Block.CautionBox::id)
                          .containsExactlyElementsOf(all);
                      assertThat(paper.shortCautions())
                          .extracting(Block.ShortCaution::id)
                          .containsExactlyElementsOf(all);
                      assertThat(last(full).role()).isEqualTo(Part.Role.CAUTIONS_IN_FULL);
                      assertThat(last(paper).role()).isEqualTo(Part.Role.CAUTIONS_IN_FULL);
                      list.lines()
                          .forEach(
                              line ->
                                  assertThat(known.of(line.work()))
                                      .allSatisfy(
                                          caution ->
                                              assertThat(beside(paper, line))
                                                  .contains(caution.title())));
                    }));
  }

  private static Part last(CutPage page) {
    return page.parts().get(page.parts().size() - 1);
  }

  /** What stands beside a line. */
  private static String beside(CutPage page, ListLine line) {
    return page.parts().stream()
        .flatMap(part -> part.blocks().stream())
        .filter(Block.TickList.class::isInstance)
        .flatMap(block -> ((Block.TickList) block).ticks().stream())
        .filter(tick -> tick.number().equals(Integer.toString(line.number())))
        .flatMap(tick -> tick.beside().stream())
        .map(fact -> fact.name() + ": " + InlineText.of(fact.value()))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void workOfTheYardAndOfTheLicensedIsMarkedAndHasNoSteps() {
    WorkList list = list("dunlin", ListKind.FITTING_OUT);
    List<ListLine> licensed =
        list.lines().filter(line -> line.work().details().skill() == Skill.LICENSED).toList();
    assertThat(licensed).isNotEmpty();
    String text =
        PdfText.flat(new PlainText().render(new WorkListSheet(workspace.library()).of(list), 100));
    for (ListLine line : licensed) {
      assertThat(text)
          .containsPattern(
              Pattern.quote(line.number() + ". " + line.work().title())
                  + " [^\\[]*only for a person licensed for it");
      line.work()
          .body()
          .lines()
          .filter(step -> step.matches("\\d+\\. .*"))
          .forEach(step -> assertThat(text).doesNotContain(PdfText.flat(step.substring(3))));
    }
  }

  @TestFactory
  Stream<DynamicTest> theCsvHoldsTheSameLines() {
    return all()
        .map(
            list ->
                DynamicTest.dynamicTest(
                    name(list),
                    () -> {
                      String text = new WorkListCsv(workspace.library()).render(list);
                      assertThat(text).contains("\r\n");
                      CSVFormat format =
                          CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
                      try (CSVParser csv = CSVParser.parse(new StringReader(text), format)) {
                        List<CSVRecord> records = csv.getRecords();
                        assertThat(records)
                            .extracting(record -> record.get("page"))
                            .containsExactlyElementsOf(
                                list.lines().map(line -> line.work().id()).toList());
                        assertThat(
                                records.stream()
                                    .mapToInt(each -> Integer.parseInt(each.get("minutes")))
                                    .sum())
                            .isEqualTo(list.workMinutes());
                        assertThat(
                                records.stream()
                                    .mapToDouble(
                                        each -> Double.parseDouble(each.get("open-minutes")))
                                    .sum())
                            .isEqualTo(list.accessMinutes());
                        assertThat(records.get(0).get("bad"))
                            .isEqualTo(
                                list.lines()
                                    .findFirst()
                                    .orElseThrow()
                                    .work()
                                    .details()
                                    .lookFor()
                                    .orElseThrow()
                                    .bad());
                      }
                    }));
  }
}
