package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The list of what is to be booked, in the Upkeep place, through real keyboard events. */
class AppointmentsWindowTest extends RealWindow {
  private WorkspaceFolders folders;

  @Override
  @BeforeEach
  void open() throws IOException {
    folders = SmallWorkspace.copyTo(folder);
    page("swaging", "Renew the stays", "P10Y", "hurts", "rigger", "P12W");
    page("lifting", "Have the mast stepped", "P1Y", "stops", "crane", "P6W");
    page("welding", "Weld the cradle", "P20Y", "costs", "yard", "P6W");
    Path log = folders.boats().resolve("knot/log.csv");
    Files.writeString(
        log, "2026-04-14,lifting,,\n2026-04-14,welding,,\n", StandardOpenOption.APPEND);
    window = SmallWindow.open(folders, new Memory(new Forgetful()));
    go(LocalDate.of(2027, 1, 10));
  }

  private void page(String id, String title, String every, String left, String with, String book)
      throws IOException {
    Files.writeString(
        folders.articles().resolve("procedures/" + id + ".md"),
        "---\ntitle: "
            + title
            + "\nsystem: deck\nwork: renew\nskill: yard\nminutes: 300\ncautions: [flooding]\n"
            + "interval: {every: "
            + every
            + ", phase: ashore-mast-up, left-undone: "
            + left
            + ", need: must}\nappointment: {with: "
            + with
            + ", minutes: 20, book: "
            + book
            + "}\n---\n1. Have it done.\n");
  }

  private void go(LocalDate day) {
    window.act(
        () -> {
          desk().session().choose(Optional.of("knot"));
          desk().upkeep().day(Optional.of(day));
        });
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    window.press(KeyEvent.VK_O, KeyEvent.VK_ALT);
    window.until("the list is looked at", () -> window.shows("appointments-print"));
  }

  private List<String> lines() {
    CardList<?> list = window.find("appointments", CardList.class);
    return window.ask(() -> list.entries().stream().map(Object::toString).toList());
  }

  private void untilLines(int count) {
    window.until(
        count + " are listed", () -> window.shows("appointments") && lines().size() == count);
  }

  private void untilWords(String what) {
    window.until(
        "it says " + what,
        () ->
            window.showing().stream()
                .anyMatch(one -> one instanceof Wrapped text && text.getText().contains(what)));
  }

  private void untilNotice(String ending) {
    window.until(
        "it says that it is written",
        () -> desk().notices().current().filter(n -> n.text().contains(ending)).isPresent());
  }

  @Test
  void whomToCallAndWhenStandsInWordsWithWhatItMeans() {
    untilLines(2);
    assertThat(lines().get(0))
        .contains("A rigger: call now")
        .contains("Renew the stays")
        .contains("Was due by 20 May 2026")
        .contains("Book now: should have been booked by 30 December 2026. Plan it for")
        .contains("Left undone it can hurt somebody, or lose the rig, rudder or keel.")
        .contains("Caution: The boat takes on water.")
        .contains("Your own time: 20 min practised, 30 min the first time.");
    assertThat(lines().get(1))
        .contains("The crane: call by 3 March 2027")
        .contains("Book by 3 March 2027. Plan it for 14 April 2027");
    untilWords("2 appointments, 1 of them now.");
    untilWords("1 appointment comes after this season, the first with the yard");
  }

  @Test
  void enterOpensThePageAndLaterWorkIsListedWhenAsked() {
    untilLines(2);
    window.focus("appointments-later");
    window.press(KeyEvent.VK_SPACE);
    untilLines(3);
    assertThat(lines().get(2)).contains("Weld the cradle");
    window.press(KeyEvent.VK_O, KeyEvent.VK_ALT);
    window.until(
        "the list has the focus", window.find("appointments", CardList.class)::isFocusOwner);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    window.until(
        "its page is open",
        () -> desk().reading().page().filter(page -> page.id().equals("lifting")).isPresent());
  }

  @Test
  void itIsPrintedAndSaved() throws IOException {
    untilLines(2);
    window.focus("appointments");
    window.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL);
    window.until("it is printed", () -> window.printer().jobs().size() == 1);
    window.focus("appointments-pdf");
    window.press(KeyEvent.VK_ENTER);
    untilNotice("appointments-knot.pdf");
    assertThat(folder.resolve("appointments-knot.pdf")).isNotEmptyFile();
    window.focus("appointments-csv");
    window.press(KeyEvent.VK_ENTER);
    untilNotice("appointments-knot.csv");
    assertThat(Files.readString(folder.resolve("appointments-knot.csv")))
        .contains("knot,1,rigger,swaging,Renew the stays")
        .contains("should have been booked by 2026-12-30");
  }

  @Test
  void withNothingToBookItSaysWhatComesFirst() {
    untilLines(2);
    window.act(() -> desk().upkeep().day(Optional.of(LocalDate.of(2016, 6, 1))));
    untilWords("Nothing is to be booked: what is due now and this season is the owner's own work.");
    untilWords("3 appointments come after this season, the first with the crane, book by ");
    assertThat(lines()).isEmpty();
    assertThat(window.find("appointments-print", JButton.class).isEnabled()).isFalse();
    window.click("appointments-later");
    untilLines(3);
  }
}
