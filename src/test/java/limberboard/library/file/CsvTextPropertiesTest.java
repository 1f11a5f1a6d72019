package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What is written as CSV is read again as it was, by this grammar and by another reader. */
class CsvTextPropertiesTest {

  @Property(seed = "3", tries = 500)
  void whatIsWrittenIsReadAgain(@ForAll("rows") List<List<String>> rows, @ForAll("ends") String end)
      throws IOException {
    String text = rows.stream().map(row -> CsvText.line(row) + end).collect(Collectors.joining());
    CsvText read = CsvText.read(text);
    assertThat(read.brokenFrom()).isEmpty();
    assertThat(read.rows().stream().map(CsvText.Row::cells)).isEqualTo(rows);
    try (CSVParser parser = CSVParser.parse(new StringReader(text), CSVFormat.RFC4180)) {
      assertThat(parser.getRecords().stream().map(CSVRecord::toList)).isEqualTo(rows);
    }
  }

  @Property(seed = "4", tries = 500)
  void eachLineStandsWhereItSays(@ForAll("rows") List<List<String>> rows) {
    String text = rows.stream().map(CsvText::line).collect(Collectors.joining("\n"));
    List<CsvText.Row> read = CsvText.read(text).rows();
    assertThat(read.stream().map(row -> text.substring(row.from(), row.to())))
        .isEqualTo(rows.stream().map(CsvText::line).toList());
  }

  @Provide
  Arbitrary<List<List<String>>> rows() {
    Arbitrary<String> cell =
        Arbitraries.of("a", ",", "\"", "\n", "\r", "\r\n", " ", "\t", "#", "'", "é", "=", "\uFEFF")
            .list()
            .ofMaxSize(5)
            .map(parts -> String.join("", parts));
    return cell.list().ofMinSize(1).ofMaxSize(4).list().ofMaxSize(5);
  }

  @Provide
  Arbitrary<String> ends() {
    return Arbitraries.of("\n", "\r\n");
  }
}
