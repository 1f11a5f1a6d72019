package limberboard.desktop.letters;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.letters.inbox.LetterFolder;
import limberboard.library.file.WorkspaceFolders;

/** An inbox over a copy of the small workspace, with the letters that a test writes into it. */
final class SmallLetters {
  static final String WET =
      "From: Ada Lind <ada@example.org>\nDate: Mon, 18 May 2026 08:00:00 +0000\n"
          + "Message-ID: <wet@example.org>\nSubject: Wet locker on Knot\n\n"
          + "Everything in the locker of Knot is soaked, there is a puddle under the lid."
          + " The water comes after rain.\n\n> Is it wet?\n";

  static final String BOOKING =
      "From: Ben Oake <ben@example.org>\nDate: Tue, 19 May 2026 08:00:00 +0000\n"
          + "Subject: Crane\n\nPlease book the crane for us in April. What does it cost?\n";

  static final String GAS =
      "From: Cleo Marsh <cleo@example.org>\nDate: Fri, 15 May 2026 08:00:00 +0000\n"
          + "Subject: Small question\n\nThere is a strong smell of gas in the cabin of Knot.\n";

  final WorkspaceFolders folders;
  final Session session = new Session(SmallWorkspace.clock(), Optional.empty());
  final Notices notices = new Notices();
  final List<String> begun = Collections.synchronizedList(new ArrayList<>());
  final LetterReading reading;
  final InboxModel inbox;
  final LetterModel model;

  SmallLetters(Path folder, Executor letters) {
    folders = SmallWorkspace.copyTo(folder);
    LetterNotes notes = LetterNotes.of(new LetterFolder(folders));
    reading = new LetterReading(folders, notes, begun::add);
    Background slow = new Background(letters, Runnable::run, new Activity(), notices);
    Background writing = new Background(Runnable::run, Runnable::run, new Activity(), notices);
    inbox = new InboxModel(session, slow, reading);
    model = new LetterModel(session, inbox, reading, slow, writing, notices);
  }

  SmallLetters read() {
    Workspace workspace = SmallWorkspace.read(folders);
    session.replace(workspace);
    return this;
  }

  Path file(String name) {
    return folders.letters().resolve(name);
  }

  SmallLetters write(String name, String text) {
    return write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  SmallLetters write(String name, byte[] bytes) {
    try {
      Files.createDirectories(folders.letters());
      Files.write(file(name), bytes);
      Files.setLastModifiedTime(file(name), FileTime.from(Instant.parse("2026-05-01T00:00:00Z")));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The usual three letters. */
  SmallLetters usual() {
    return write("wet.eml", WET).write("booking.eml", BOOKING).write("gas.eml", GAS);
  }

  List<String> names() {
    return inbox.shown().stream().map(InboxRow::name).toList();
  }

  InboxRow row(String name) {
    return inbox.shown().stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow();
  }
}
