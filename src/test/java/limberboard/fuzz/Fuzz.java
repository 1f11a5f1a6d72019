package limberboard.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Spoils files of a workspace, round after round, and runs the commands over it. Everything follows
 * from the seed; each round has its own, so that one round can be run again alone.
 */
final class Fuzz {
  private static final int FILES_A_ROUND = 8;
  private static final int ROUNDS_A_PDF = 4;
  private static final List<String> WHOLE = List.of("validate", "due");

  private final FuzzWorkspace workspace;
  private final Watched watched;
  private final String soundPage;
  private int files;
  private int commands;
  private final List<String> findings = new ArrayList<>();

  Fuzz(FuzzWorkspace workspace, Watched watched) {
    this.workspace = workspace;
    this.watched = watched;
    this.soundPage = readSound().out();
    Watched.Ran checked = watched.run("validate");
    List<String> wrong =
        checked.out().lines().filter(line -> line.matches("[a-z-]+/[a-z-]*/?sound.*")).toList();
    if (!wrong.isEmpty()) {
      throw new IllegalStateException("the sound files are not sound: " + wrong);
    }
  }

  private Watched.Ran readSound() {
    return watched.run("read", FuzzWorkspace.SOUND_PAGE, "--boat", FuzzWorkspace.SOUND_BOAT);
  }

  /** Files that were spoilt so far. */
  int files() {
    return files;
  }

  /** Commands that were run so far. */
  int commands() {
    return commands;
  }

  /** What must not be, with the round it was found in. */
  List<String> findings() {
    return List.copyOf(findings);
  }

  /** One round. */
  void round(long seed) throws IOException {
    Mutator mutator = new Mutator(seed);
    TreeSet<String> spoilt = new TreeSet<>();
    while (spoilt.size() < FILES_A_ROUND) {
      String file = mutator.any(workspace.files());
      if (spoilt.add(file)) {
        workspace.write(file, mutator.spoil(file, workspace.original(file)));
        files++;
      }
    }
    all("round " + seed, pageOf(spoilt), seed % ROUNDS_A_PDF == 0);
    workspace.restore(spoilt);
  }

  /** One attack made by hand. */
  void attack(Attack attack) throws IOException {
    attack.files().forEach(this::write);
    files += attack.files().size();
    all(attack.name(), pageOf(attack.files().keySet()), true);
    workspace.restore(attack.files().keySet());
  }

  private void write(String file, String text) {
    try {
      workspace.write(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** The id of a page among the files. */
  private static Optional<String> pageOf(java.util.Set<String> files) {
    return files.stream()
        .filter(file -> file.endsWith(".md"))
        .map(file -> file.substring(file.lastIndexOf('/') + 1, file.length() - ".md".length()))
        .findFirst();
  }

  private void all(String name, Optional<String> page, boolean onPaper) throws IOException {
    String boat = FuzzWorkspace.BOAT;
    WHOLE.forEach(word -> run(name, word));
    run(name, "find", "water in the cabin after rain", "--boat", boat);
    run(name, "trace", "water-in-forward-cabin", "--boat", boat, "--json");
    run(name, "list", "fitting-out", "--boat", boat);
    run(name, "shopping", "--boat", boat);
    run(name, "read", page.orElse("tarnwick-26"));
    run(name, "read", page.orElse("tarnwick-26"), "--boat", boat);
    if (onPaper) {
      Path pdf = workspace.root().resolve("page.pdf");
      run(name, "read", page.orElse("tarnwick-26"), "--pdf", pdf.toString());
      Files.deleteIfExists(pdf);
    }
    sound(name);
  }

  private Watched.Ran run(String name, String... words) {
    commands++;
    Watched.Ran ran = watched.run(words);
    ran.wrong().ifPresent(wrong -> findings.add(name + ": " + wrong));
    return ran;
  }

  /** What was not spoilt works as ever. */
  private void sound(String name) {
    String boat = FuzzWorkspace.SOUND_BOAT;
    Watched.Ran read = run(name, "read", FuzzWorkspace.SOUND_PAGE, "--boat", boat);
    if (!read.out().equals(soundPage)) {
      findings.add(name + ": a sound page reads otherwise: " + read.out() + read.err());
    }
    works(name, "sound-service", run(name, "due", "--boat", boat));
    works(name, "Sound service", run(name, "list", "laying-up", "--boat", boat));
    works(name, "The seal leaks", run(name, "trace", "sound-leak", "--boat", boat, "--json"));
    works(name, FuzzWorkspace.SOUND_PAGE, run(name, "find", "a sound topic", "--boat", boat));
  }

  private void works(String name, String wanted, Watched.Ran ran) {
    if (ran.code() != 0 || !ran.out().contains(wanted)) {
      String said = (ran.out() + ran.err()).lines().limit(5).toList().toString();
      findings.add(name + ": what was not spoilt no longer works (" + wanted + "): " + said);
    }
  }
}
