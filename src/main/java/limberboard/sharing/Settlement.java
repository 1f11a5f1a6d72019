package limberboard.sharing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.history.HistoryTrouble;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;

/**
 * What a person chose for conflicts: by file, or by a part of a file. A file goes by its path or,
 * of a page, by its id.
 *
 * @param choices {@code FILE} or {@code FILE:PART} to what was chosen
 * @param seen of some of these, the conflict that was looked at: where it is another by now, its
 *     choice counts no more
 */
public record Settlement(Map<String, Choice> choices, Map<String, Conflict> seen) {
  /** Copies the maps. */
  public Settlement {
    choices = Map.copyOf(choices);
    seen = Map.copyOf(seen);
  }

  /** Choices that hold whatever the texts are. */
  public Settlement(Map<String, Choice> choices) {
    this(choices, Map.of());
  }

  /** Choices for conflicts just as they were looked at. */
  public static Settlement of(Map<Conflict, Choice> chosen) {
    Map<String, Choice> choices = new LinkedHashMap<>();
    Map<String, Conflict> seen = new LinkedHashMap<>();
    chosen.forEach(
        (conflict, choice) -> {
          choices.put(name(conflict.file(), conflict), choice);
          seen.put(name(conflict.file(), conflict), conflict);
        });
    return new Settlement(choices, seen);
  }

  /** Nothing is chosen. */
  public static Settlement none() {
    return new Settlement(Map.of());
  }

  /**
   * Reads choices such as {@code bends=ours} and {@code bends:minutes=theirs}.
   *
   * @throws HistoryTrouble when one is not written so
   */
  public static Settlement read(List<String> lines) throws HistoryTrouble {
    Map<String, Choice> choices = new LinkedHashMap<>();
    int number = 0;
    for (String line : lines) {
      number++;
      String text = line.strip();
      if (text.isEmpty() || text.startsWith("#")) {
        continue;
      }
      int equals = text.lastIndexOf('=');
      Optional<Choice> choice = equals < 1 ? Optional.empty() : choice(text.substring(equals + 1));
      if (choice.isEmpty()) {
        throw new HistoryTrouble(
            "choice " + number + ", \"" + text + "\", is none",
            "write PAGE=ours, PAGE=theirs, or PAGE:PART=ours, theirs, both or before");
      }
      choices.put(text.substring(0, equals).strip(), choice.get());
    }
    return new Settlement(choices);
  }

  private static Optional<Choice> choice(String word) {
    for (Choice choice : Choice.values()) {
      if (choice.word().equals(word.strip())) {
        return Optional.of(choice);
      }
    }
    return Optional.empty();
  }

  /** What was chosen for a conflict; of its part before its file. */
  public Optional<Choice> of(Conflict conflict) {
    List<String> names = names(conflict.file());
    return names.stream()
        .map(name -> choices.get(name(name, conflict)))
        .filter(choice -> choice != null)
        .findFirst()
        .or(() -> names.stream().map(choices::get).filter(c -> c != null).findFirst())
        .filter(choice -> choice != Choice.BOTH || conflict.mayBeBoth())
        .filter(choice -> seenAs(conflict));
  }

  private boolean seenAs(Conflict conflict) {
    Conflict before = seen.get(name(conflict.file(), conflict));
    return before == null || before.equals(conflict);
  }

  /** How a choice names a conflict's part, by a name of its file. */
  private static String name(String file, Conflict conflict) {
    return file + ":" + conflict.part();
  }

  private static List<String> names(String file) {
    List<String> names = new ArrayList<>(List.of(file));
    String name = file.substring(file.lastIndexOf('/') + 1);
    names.add(name);
    if (name.endsWith(".md")) {
      names.add(name.substring(0, name.length() - ".md".length()));
    }
    return names;
  }

  /** Choices that speak of no conflict there is: mistyped, or settled meanwhile. */
  public List<String> idle(List<Conflict> conflicts) {
    return choices.keySet().stream()
        .filter(
            name ->
                conflicts.stream()
                    .noneMatch(
                        conflict ->
                            names(conflict.file()).stream()
                                .anyMatch(
                                    file ->
                                        file.equals(name) || name(file, conflict).equals(name))))
        .sorted()
        .toList();
  }
}
