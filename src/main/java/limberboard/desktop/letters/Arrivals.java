package limberboard.desktop.letters;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.letters.mail.LetterAsFile;
import limberboard.library.file.FileTrouble;
import limberboard.words.CountWords;

/**
 * Letters that are opened, dropped or pasted: they are copied into the folder of letters, and the
 * last one is opened. For the event thread only.
 */
final class Arrivals {
  private static final Pattern HEADER =
      Pattern.compile("(?s)\\s*(?:From|To|Date|Subject|Return-Path|Received|Message-ID): .*");
  private static final int LEAST_FIELDS = 2;
  private final Session session;
  private final InboxModel inbox;
  private final LetterReading reading;
  private final Background background;
  private final Notices notices;

  Arrivals(
      Session session,
      InboxModel inbox,
      LetterReading reading,
      Background background,
      Notices notices) {
    this.session = session;
    this.inbox = inbox;
    this.reading = reading;
    this.background = background;
    this.notices = notices;
  }

  private record Came(List<String> names, List<String> refused) {}

  /** Takes letters from files. */
  void files(List<Path> files) {
    if (!files.isEmpty()) {
      background.run("Copying letters", () -> copied(files), this::came);
    }
  }

  private Came copied(List<Path> files) {
    List<String> names = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    for (Path file : files) {
      String name = String.valueOf(file.getFileName());
      try {
        if (!LetterAsFile.isLetter(name)) {
          refused.add(name + " is no letter: save it as .eml in your mail program");
        } else if (Files.size(file) > LetterAsFile.LARGEST) {
          refused.add(name + " is longer than " + LetterAsFile.LARGEST / 1_000_000 + " MB");
        } else {
          names.add(reading.add(name, Files.readAllBytes(file)));
        }
      } catch (IOException e) {
        refused.add(name + " was not taken: " + FileTrouble.reason(e));
      }
    }
    return new Came(names, refused);
  }

  /** Takes a letter from text; where it has a header it is read as a mail. */
  void text(Optional<String> text) {
    if (text.filter(words -> !words.isBlank()).isEmpty()) {
      notices.tell("There is no text to paste. Copy the letter in your mail program first.");
      return;
    }
    LocalDate day = session.today();
    String words = text.get();
    String name = "pasted-" + day + (isMail(words) ? ".eml" : ".txt");
    byte[] bytes = words.strip().getBytes(StandardCharsets.UTF_8);
    background.run(
        "Writing the letter",
        () -> new Came(List.of(reading.add(name, bytes)), List.of()),
        this::came);
  }

  private static boolean isMail(String text) {
    String head = text.strip().split("\\R\\s*\\R", 2)[0];
    long fields = head.lines().filter(line -> HEADER.matcher(line).matches()).count();
    return fields >= LEAST_FIELDS && HEADER.matcher(head).matches();
  }

  private void came(Came came) {
    if (!came.refused().isEmpty()) {
      notices.warn(String.join(". ", came.refused()) + ".");
    } else {
      notices.tell(
          CountWords.of(came.names().size(), "letter") + " put into " + reading.place() + ".");
    }
    if (!came.names().isEmpty()) {
      inbox.choose(came.names().get(came.names().size() - 1));
      inbox.look();
    }
  }
}
