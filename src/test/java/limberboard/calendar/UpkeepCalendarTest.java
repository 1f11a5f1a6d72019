package limberboard.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.LogEntry;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.words.DayText;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The calendar, read and validated by a second library (ical4j) against RFC 5545, "Internet
 * Calendaring and Scheduling Core Object Specification".
 */
class UpkeepCalendarTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 15);
  private static final Workspace DEMO = demo();

  private static Workspace demo() {
    try {
      return new WorkspaceReader(new WorkspaceFolders(Path.of("").toAbsolutePath())).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Upkeep upkeep(Boat boat, LocalDate on) {
    return Upkeep.of(DEMO.library(), new Fitting(boat, on));
  }

  private static String text(Upkeep upkeep) {
    return new UpkeepCalendar(7).text(upkeep);
  }

  private static Calendar parsed(String text) throws IOException, ParserException {
    return new CalendarBuilder().build(new StringReader(text));
  }

  private static Map<String, VEvent> byUid(Calendar calendar) {
    return calendar.<CalendarComponent>getComponents(Component.VEVENT).stream()
        .map(VEvent.class::cast)
        .collect(Collectors.toMap(event -> value(event, Property.UID), event -> event));
  }

  private static String value(VEvent event, String name) {
    return event.getProperty(name).map(Property::getValue).orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"dunlin", "greenshank", "redshank", "sanderling", "turnstone", "whimbrel"})
  void aSecondLibraryFindsItValid(String id) throws IOException, ParserException {
    Upkeep upkeep = upkeep(DEMO.boat(id).orElseThrow(), DAY);
    Calendar calendar = parsed(text(upkeep));
    ValidationResult result = calendar.validate();
    assertThat(result.hasErrors()).as(result.toString()).isFalse();
    int work = (int) upkeep.all().stream().filter(due -> due.season() <= 2028).count();
    int bookings =
        (int)
            upkeep.appointments().all().stream().filter(each -> each.booking().isPresent()).count();
    assertThat(bookings).isPositive();
    assertThat(byUid(calendar).values())
        .hasSize(work + bookings)
        .allSatisfy(
            event -> {
              assertThat(event.validate().hasErrors()).isFalse();
              assertThat(event.getAlarms()).hasSize(1);
              assertThat(event.getAlarms().get(0).validate().hasErrors()).isFalse();
            });
  }

  @Test
  void anEventIsOnTheDayTheWorkIsBestDone() throws IOException, ParserException {
    Upkeep upkeep = upkeep(DEMO.boat("whimbrel").orElseThrow(), DAY);
    Due anodes =
        upkeep.all().stream().filter(d -> d.id().equals("renew-anodes")).findFirst().orElseThrow();
    VEvent event =
        byUid(parsed(text(upkeep))).values().stream()
            .filter(e -> value(e, Property.SUMMARY).equals("Whimbrel: Renew the anodes"))
            .findFirst()
            .orElseThrow();
    assertThat(value(event, Property.DTSTART)).isEqualTo(anodes.plan().toString().replace("-", ""));
    assertThat(value(event, Property.DTEND))
        .isEqualTo(anodes.plan().plusDays(1).toString().replace("-", ""));
    assertThat(value(event, Property.DESCRIPTION))
        .startsWith("Cautions first: ")
        .contains(anodes.why().said(DayText::written));
    assertThat(event.getAlarms().get(0).getProperty(Property.TRIGGER).orElseThrow().getValue())
        .isIn("-P7D", "-P1W");
  }

  @Test
  void othersAreBookedOnTheDayByWhichToBookThem() throws IOException, ParserException {
    Upkeep upkeep = upkeep(DEMO.boat("dunlin").orElseThrow(), LocalDate.of(2026, 11, 29));
    String text = new UpkeepCalendar(3).bookings(upkeep);
    Calendar calendar = parsed(text);
    assertThat(calendar.validate().hasErrors()).isFalse();
    List<VEvent> events = List.copyOf(byUid(calendar).values());
    assertThat(events).hasSize(upkeep.appointments().all().size());
    VEvent crane =
        events.stream()
            .filter(event -> value(event, Property.SUMMARY).startsWith("Dunlin: book the crane"))
            .findFirst()
            .orElseThrow();
    assertThat(value(crane, Property.DTSTART)).isEqualTo("20270303");
    assertThat(value(crane, Property.DESCRIPTION))
        .startsWith("Cautions first: ")
        .contains("The crane: call by 3 March 2027.")
        .contains("Book by 3 March 2027.")
        .contains("Your own time: 30 min practised, 45 min the first time.");
    assertThat(byUid(parsed(text(upkeep))).keySet()).containsAll(byUid(calendar).keySet());
  }

  @Test
  void aSecondImportMovesAnEventInsteadOfDoublingIt() throws IOException, ParserException {
    Boat boat = DEMO.boat("whimbrel").orElseThrow();
    Map<String, VEvent> first = byUid(parsed(text(upkeep(boat, DAY))));
    LocalDate later = LocalDate.of(2026, 4, 10);
    List<LogEntry> log = new ArrayList<>(boat.log());
    log.removeIf(entry -> entry.date().isAfter(DAY));
    log.add(
        new LogEntry(
            later, "renew-anodes", OptionalDouble.empty(), Map.of(), "", Optional.empty(), 0));
    Map<String, VEvent> second = byUid(parsed(text(upkeep(boat.with(log), later))));
    String uid =
        first.keySet().stream()
            .filter(key -> value(first.get(key), Property.SUMMARY).endsWith("Renew the anodes"))
            .findFirst()
            .orElseThrow();
    assertThat(second).containsKey(uid);
    assertThat(value(second.get(uid), Property.DTSTART))
        .isGreaterThan(value(first.get(uid), Property.DTSTART));
    assertThat(Integer.parseInt(value(second.get(uid), Property.SEQUENCE)))
        .isGreaterThan(Integer.parseInt(value(first.get(uid), Property.SEQUENCE)));
  }

  @Test
  void noTwoBoatsShareAnEvent() throws IOException, ParserException {
    List<String> uids = new ArrayList<>();
    for (Boat boat : DEMO.boats()) {
      uids.addAll(byUid(parsed(text(upkeep(boat, DAY)))).keySet());
    }
    assertThat(uids).doesNotHaveDuplicates().hasSizeGreaterThan(100);
  }

  @Test
  void linesAreFoldedAndEndedAsTheStandardAsks() {
    String text = text(upkeep(DEMO.boat("dunlin").orElseThrow(), DAY));
    assertThat(text).endsWith("END:VCALENDAR\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
    assertThat(text.split("\r\n"))
        .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
  }
}
