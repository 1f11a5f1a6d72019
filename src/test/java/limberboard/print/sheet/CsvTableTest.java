package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The characters are those of the page "CSV Injection" of the OWASP Foundation. */
class CsvTableTest {
  @Test
  void whatASpreadsheetWouldReckonIsMadeText() throws IOException {
    List<String> formulas =
        List.of("=1+1", "+cmd", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "=HYPERLINK(\"http://x\")");
    CsvTable table = new CsvTable("cell", "other");
    formulas.forEach(formula -> table.row(formula, "x"));
    try (CSVParser parser = CSVParser.parse(new StringReader(table.text()), CSVFormat.RFC4180)) {
      List<CSVRecord> rows = parser.getRecords();
      assertThat(rows).hasSize(formulas.size() + 1);
      for (int i = 0; i < formulas.size(); i++) {
        assertThat(rows.get(i + 1).get(0)).isEqualTo("'" + formulas.get(i));
      }
    }
  }

  @Test
  void numbersAndOtherTextsStay() {
    CsvTable table = new CsvTable("a", "b", "c", "d");
    table.row(-3, "-3.5", "+4", "a = b - c");
    assertThat(table.text()).isEqualTo("a,b,c,d\r\n-3,-3.5,+4,a = b - c\r\n");
  }
}
