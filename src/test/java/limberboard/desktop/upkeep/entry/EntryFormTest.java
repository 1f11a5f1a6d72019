package limberboard.desktop.upkeep.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.upkeep.entry.EntryForm.Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EntryFormTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private final EntryForm form =
      new EntryForm("replace-gasket", Optional.empty(), TODAY, List.of("hoists"));

  @Test
  void beginsAtTodayAndNeedsNothingElse() {
    assertThat(form.text(Field.DAY)).isEqualTo("20 May 2026");
    assertThat(form.entry()).isPresent();
    assertThat(form.entry().orElseThrow().date()).isEqualTo(TODAY);
    assertThat(form.entry().orElseThrow().uses()).isEmpty();
    assertThat(form.entry().orElseThrow().engineHours()).isEmpty();
  }

  @Test
  void takesDayHoursCountsAndNote() {
    form.set(Field.DAY, "2026-03-01");
    form.set(Field.HOURS, " 356,5 ");
    form.set(Field.count("hoists"), "12");
    form.set(Field.NOTE, "  new strip ");
    var entry = form.entry().orElseThrow();
    assertThat(entry.date()).isEqualTo(LocalDate.of(2026, 3, 1));
    assertThat(entry.engineHours()).hasValue(356.5);
    assertThat(entry.uses()).containsEntry("hoists", 12);
    assertThat(entry.note()).isEqualTo("new strip");
    assertThat(entry.work()).isEqualTo("replace-gasket");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "some day", "tomorrow", "2026-02-30", "30 February 2026", "21 May 2026"})
  void aDayThatIsNoneOrStillToComeIsNotTaken(String day) {
    form.set(Field.DAY, day);
    assertThat(form.problem(Field.DAY)).isNotEmpty();
    assertThat(form.entry()).isEmpty();
  }

  @Test
  void aDayIsReadAsPeopleWriteItAndToldBack() {
    form.set(Field.DAY, "1.3.2026");
    assertThat(form.problem(Field.DAY)).isEmpty();
    assertThat(form.told(Field.DAY)).isEqualTo("Read as 1 March 2026.");
    assertThat(form.entry().orElseThrow().date()).isEqualTo(LocalDate.of(2026, 3, 1));
    form.set(Field.DAY, "yesterday");
    assertThat(form.told(Field.DAY)).isEqualTo("Read as 19 May 2026.");
    form.set(Field.DAY, "1 March 2026");
    assertThat(form.told(Field.DAY)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "many", "NaN", "Infinity", "1e7"})
  void hoursAreANumberFromNoughtOn(String hours) {
    form.set(Field.HOURS, hours);
    assertThat(form.problem(Field.HOURS)).isNotEmpty();
    assertThat(form.entry()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "2.5", "a few", "99999999999"})
  void countsAreWholeNumbers(String count) {
    form.set(Field.count("hoists"), count);
    assertThat(form.problem(Field.count("hoists"))).isNotEmpty();
    assertThat(form.entry()).isEmpty();
  }

  @Test
  void otherWorkKeepsWhatWasTyped() {
    form.set(Field.NOTE, "kept");
    EntryForm other = form.with("launched", Optional.empty());
    assertThat(other.work()).isEqualTo("launched");
    assertThat(other.text(Field.NOTE)).isEqualTo("kept");
    assertThat(other.text(Field.DAY)).isEqualTo("20 May 2026");
  }
}
