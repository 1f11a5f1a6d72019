package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;
import limberboard.desktop.parts.Wrapped;
import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.Attachment;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.MailReader;
import limberboard.letters.mail.Mailbox;
import org.junit.jupiter.api.Test;

/** The Letters place through real mouse and keyboard events. */
class LettersWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final int SHIFT = KeyEvent.VK_SHIFT;
  private static final String LIKELY = "piece-wet-locker/likely";
  private static final String WET =
      "From: Ada Lind <ada@example.org>\nDate: Mon, 18 May 2026 08:00:00 +0000\n"
          + "Message-ID: <wet@example.org>\nReferences: <first@example.org>\n"
          + "Subject: Wet locker on Knot\n\n"
          + "Everything in the locker of Knot is soaked, there is a puddle under the lid."
          + " The water comes after rain.\n\nOn 3 May 2026, the yard wrote:\n> Is it wet?\n";
  private static final String CRANE =
      "From: Ben Oake <ben@example.org>\nDate: Tue, 19 May 2026 08:00:00 +0000\n"
          + "Subject: Crane\n\nPlease book the crane for us in April. What does it cost?\n";

  private Path letter(String name, String text) throws IOException {
    Files.createDirectories(window.folders().letters());
    return Files.writeString(window.folders().letters().resolve(name), text);
  }

  private void goTo() {
    window.press(KeyEvent.VK_4, CTRL);
    window.until(
        "letters are there", () -> window.shows("inbox") || window.shows("no-letters-paste"));
  }

  private String words(String name) {
    return window.ask(() -> window.find(name, JTextComponent.class).getText());
  }

  private String focused() {
    return window.ask(
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          return owner == null ? "" : String.valueOf(owner.getName());
        });
  }

  private boolean says(String what) {
    return window.showing().stream()
        .anyMatch(one -> one instanceof Wrapped text && text.getText().contains(what));
  }

  private void untilSays(String what) {
    window.until("it says " + what, () -> says(what));
  }

  private void untilDrafted() {
    window.until("the draft is there", () -> window.shows("piece-closing"));
  }

  private void tabTo(String name, int... held) {
    for (int i = 0; i < 80 && !focused().equals(name); i++) {
      window.press(KeyEvent.VK_TAB, held);
    }
    assertThat(focused()).isEqualTo(name);
  }

  @Test
  void withoutLettersItSaysHowTheyComeAndOneIsPasted() throws IOException {
    goTo();
    untilSays("No letters yet");
    window.clipboard("Everything in the locker of Knot is soaked, a puddle under the lid.");
    assertThat(focused()).isEqualTo("no-letters-paste");
    window.press(KeyEvent.VK_ENTER);
    untilDrafted();
    Path pasted = window.folders().letters().resolve("pasted-2026-05-20.txt");
    assertThat(Files.readString(pasted)).startsWith("Everything in the locker");
    untilSays("By her name, Knot.");
  }

  @Test
  void whatToWriteNextIsListedAndAPageBegun() throws IOException {
    letter("crane.eml", CRANE);
    letter("fridge.eml", WET.replace("Wet locker", "Fridge"));
    Files.writeString(
        window.folders().letters().resolve("fridge.eml.state"),
        "state: new\nabout: \"not-covered\"\n");
    goTo();
    window.until("both are recognised", () -> !says("Recognising") && says("2 of 2 letters."));
    tabTo("letter-next");
    window.press(KeyEvent.VK_SPACE);
    untilSays("1 letter tells of a fault that no page covers");
    untilSays("never shared");
    tabTo("next-keep");
    window.press(KeyEvent.VK_SPACE);
    untilSays("No searches are kept.");
    tabTo("next-begin-1");
    window.press(KeyEvent.VK_SPACE);
    Path page = window.folders().articles().resolve("symptoms/fridge-on-knot.md");
    window.until("the page is begun", () -> Files.exists(page));
    assertThat(Files.readString(page)).contains("title: \"Fridge on Knot\"");
    window.press(KeyEvent.VK_ESCAPE);
    window.until("the inbox is back", () -> window.shows("inbox"));
  }

  @Test
  void byKeysAloneFromTheInboxToTheSavedAnswer() throws IOException {
    letter("wet.eml", WET);
    letter("crane.eml", CRANE);
    goTo();
    window.until("both are recognised", () -> !says("Recognising") && says("2 of 2 letters."));
    window.focus("inbox");
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    untilDrafted();
    window.press(KeyEvent.VK_ENTER);
    window.until("the letter has the focus", () -> focused().equals("letter-text"));
    assertThat(words("letter-text")).contains("Everything in the locker of Knot");
    assertThat(words("letter-text")).doesNotContain("Is it wet?");
    tabTo("letter-aside-2");
    window.press(KeyEvent.VK_ENTER);
    window.until("what is quoted is there", () -> allTexts().contains("> Is it wet?"));

    window.press(KeyEvent.VK_F6);
    window.press(KeyEvent.VK_F6);
    window.until("the pieces have the focus", () -> focused().startsWith("piece-"));
    tabTo(LIKELY);
    window.press(KeyEvent.VK_A, CTRL);
    window.type("It is the gasket.");
    String told = words("piece-wet-locker/told");

    window.press(KeyEvent.VK_F6, SHIFT);
    window.until("the boat has the focus", () -> focused().equals("letter-boat"));
    tabTo("letter-answer-when");
    window.press(KeyEvent.VK_DOWN);
    window.until("told is another", () -> !words("piece-wet-locker/told").equals(told));
    assertThat(words(LIKELY)).isEqualTo("It is the gasket.");
    untilSays("What it was written on has changed.");

    Files.writeString(
        window.folders().letters().resolve("from"), "The Small Yard <office@yard.example>\n");
    tabTo("letter-attach");
    window.press(KeyEvent.VK_SPACE);
    window.press(KeyEvent.VK_TAB, SHIFT);
    tabTo("letter-save");
    window.press(KeyEvent.VK_ENTER);
    Path saved = window.folders().root().resolve("wet-answer.eml");
    window.until("the answer is saved", () -> Files.exists(saved));
    Letter answer = MailReader.read(new ByteArrayInputStream(Files.readAllBytes(saved)));
    assertThat(answer.head().subject()).isEqualTo("Re: Wet locker on Knot");
    assertThat(answer.head().repliesTo())
        .containsExactly("<wet@example.org>", "<first@example.org>");
    assertThat(answer.head().id().flatMap(AnswerId::answered))
        .as("a reply to it finds its conversation")
        .contains(AnswerId.key("<wet@example.org>"));
    assertThat(answer.own()).contains("It is the gasket.").contains("after washing");
    assertThat(answer.head().from()).contains(new Mailbox("The Small Yard", "office@yard.example"));
    assertThat(answer.attachments())
        .extracting(Attachment::name)
        .as("the page that it goes by")
        .hasSize(1)
        .allSatisfy(name -> assertThat(name).endsWith(".pdf"));

    tabTo("letter-answered");
    window.press(KeyEvent.VK_SPACE);
    window.until("it is noted", () -> Files.exists(letterState("wet.eml")));
    window.settle();
    assertThat(Files.readString(letterState("wet.eml"))).startsWith("state: answered\n");
  }

  private Path letterState(String name) {
    return window.folders().letters().resolve(name + ".state");
  }

  private String allTexts() {
    StringBuilder all = new StringBuilder();
    for (Component each : window.showing()) {
      if (each instanceof JTextComponent text) {
        all.append(text.getText()).append('\n');
      }
    }
    return all.toString();
  }

  @Test
  void theBoatIsCorrectedAndTheTraceTakesTheAnswers() throws IOException {
    letter("wet.eml", WET.replace("of Knot", "of ours").replace(" on Knot", ""));
    goTo();
    window.until("it is there", () -> window.find("inbox", JList.class).getModel().getSize() == 1);
    window.click("inbox");
    window.until("it is read", () -> window.shows("letter-boat"));
    untilDrafted();
    assertThat(says("The letter names no boat that is known here.")).isTrue();
    window.until("it asks which boat", () -> window.shows("piece-which-boat"));
    JComboBox<?> boat = window.find("letter-boat", JComboBox.class);
    window.focus("letter-boat");
    window.press(KeyEvent.VK_DOWN);
    window.until("it is Knot's", () -> String.valueOf(boat.getSelectedItem()).contains("Knot"));
    window.until("her fault is answered", () -> window.shows(LIKELY));
    untilSays("As you said.");
    window.focus("letter-trace-wet-locker");
    window.press(KeyEvent.VK_ENTER);
    window.until("the trace is shown", () -> desk().window().current().id().equals("trace"));
    window.until(
        "the letter's answer is in it",
        () -> desk().trace().trace().filter(t -> t.answers().containsKey("when")).isPresent());
    assertThat(window.ask(() -> desk().session().chosen())).contains("knot");
  }

  @Test
  void filesAreOpenedAndDropped() throws IOException {
    Path outside = Files.createTempDirectory("letters");
    Path mail = Files.writeString(outside.resolve("wet.eml"), WET);
    Path other = Files.writeString(outside.resolve("crane.eml"), CRANE);
    Path picture = Files.writeString(outside.resolve("picture.jpg"), "none");
    goTo();
    window.toOpen(mail, picture);
    window.click("no-letters-open");
    window.until("it is copied", () -> Files.exists(window.folders().letters().resolve("wet.eml")));
    assertThat(window.ask(() -> desk().notices().current().orElseThrow().text()))
        .contains("picture.jpg is no letter");
    window.act(() -> desk().window().go(desk().place("trace")));
    JComponent root = window.ask(() -> desk().window().frame().getRootPane());
    DroppedFiles files = new DroppedFiles(List.of(other.toFile()));
    window.act(
        () ->
            root.getTransferHandler().importData(new TransferHandler.TransferSupport(root, files)));
    window.until(
        "it is dropped", () -> Files.exists(window.folders().letters().resolve("crane.eml")));
    untilDrafted();
  }

  @Test
  void statisticsAreLookedAtAndLeftByKeys() throws IOException {
    letter("wet.eml", WET);
    goTo();
    window.until("it is there", () -> window.shows("inbox"));
    window.focus("letter-figures");
    window.press(KeyEvent.VK_ENTER);
    untilSays("There are no recorded cases yet.");
    assertThat(focused()).isEqualTo("figures-back");
    window.press(KeyEvent.VK_ESCAPE);
    window.until("the letters are there again", () -> focused().equals("inbox"));
  }

  @Test
  void aPictureIsShownOnlyWhenAsked() throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "png", png);
    letter(
        "picture.eml",
        "From: a@example.org\nSubject: picture\nMIME-Version: 1.0\n"
            + "Content-Type: multipart/mixed; boundary=b\n\n--b\nContent-Type: text/plain\n\n"
            + "See the picture of Knot.\n--b\nContent-Type: image/png\n"
            + "Content-Transfer-Encoding: base64\n"
            + "Content-Disposition: attachment; filename=locker.png\n\n"
            + Base64.getMimeEncoder().encodeToString(png.toByteArray())
            + "\n--b--\n");
    goTo();
    window.until("it is there", () -> window.find("inbox", JList.class).getModel().getSize() == 1);
    window.click("inbox");
    untilSays("locker.png, image/png");
    assertThat(pictures()).isZero();
    window.focus("attachment-show-1");
    window.press(KeyEvent.VK_ENTER);
    window.until("the picture is there", () -> pictures() == 1);
  }

  private long pictures() {
    return window.showing().stream()
        .filter(one -> one.getClass().getSimpleName().equals("PictureView"))
        .count();
  }

  @Test
  void anEditIsKeptWhenTheWindowIsClosed() throws IOException {
    letter("wet.eml", WET);
    goTo();
    window.until("it is there", () -> window.find("inbox", JList.class).getModel().getSize() == 1);
    window.click("inbox");
    untilDrafted();
    window.focus("piece-closing");
    window.press(KeyEvent.VK_A, CTRL);
    window.type("Yours");
    window.press(KeyEvent.VK_W, CTRL);
    window.until("the window is gone", () -> !desk().window().frame().isDisplayable());
    window.settle();
    assertThat(Files.readString(letterState("wet.eml"))).contains("Yours");
  }

  @Test
  void everyControlHasANameForThoseWhoListen() throws IOException {
    letter("wet.eml", WET);
    goTo();
    window.until("it is there", () -> window.find("inbox", JList.class).getModel().getSize() == 1);
    window.click("inbox");
    untilDrafted();
    int controls = 0;
    for (Component component : window.showing()) {
      boolean control =
          component instanceof AbstractButton
              || component instanceof JTextComponent
              || component instanceof JComboBox
              || component instanceof JList;
      if (control && component.isFocusable()) {
        String name = window.ask(() -> component.getAccessibleContext().getAccessibleName());
        assertThat(name).as("%s %s", component.getName(), component.getClass()).isNotBlank();
        controls++;
      }
    }
    assertThat(controls).isGreaterThan(30);
    JList<?> inbox = window.find("inbox", JList.class);
    String row =
        window.ask(
            () ->
                inbox
                    .getAccessibleContext()
                    .getAccessibleChild(0)
                    .getAccessibleContext()
                    .getAccessibleName());
    assertThat(row).startsWith("Ada Lind, 18 May 2026. Knot: Water in the locker.");
  }
}
