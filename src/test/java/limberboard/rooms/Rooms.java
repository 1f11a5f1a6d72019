package limberboard.rooms;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The packages directly within one package, each with those it cannot do without; arrows that
 * follow from others are left out.
 *
 * @param within the package they lie in
 * @param needs name within it to names; its own classes count as a room named {@code ""}
 */
record Rooms(String within, Map<String, Set<String>> needs) {
  private static final Path SOURCES = Path.of("src/main/java");

  /** What the classes say. */
  static Rooms of(JavaClasses classes, String within) {
    Map<String, Set<String>> all = new TreeMap<>();
    for (JavaClass each : classes) {
      room(within, each)
          .ifPresent(
              from -> {
                Set<String> to = all.computeIfAbsent(from, name -> new TreeSet<>());
                each.getDirectDependenciesFromSelf()
                    .forEach(arrow -> room(within, arrow.getTargetClass()).ifPresent(to::add));
                to.remove(from);
              });
    }
    return new Rooms(within, reduced(all));
  }

  private static Optional<String> room(String within, JavaClass type) {
    if (type.getName().endsWith(".package-info")) {
      return Optional.empty();
    }
    String name = type.getPackageName();
    if (name.equals(within)) {
      return Optional.of("");
    }
    return name.startsWith(within + ".")
        ? Optional.of(name.substring(within.length() + 1).replaceFirst("\\..*", ""))
        : Optional.empty();
  }

  private static Map<String, Set<String>> reduced(Map<String, Set<String>> all) {
    Map<String, Set<String>> few = new TreeMap<>();
    all.forEach(
        (from, to) -> {
          Set<String> kept = new TreeSet<>(to);
          for (String step : to) {
            kept.removeAll(reached(all, step));
          }
          few.put(from, kept);
        });
    return few;
  }

  private static Set<String> reached(Map<String, Set<String>> all, String from) {
    Set<String> reached = new TreeSet<>();
    Deque<String> open = new ArrayDeque<>(all.getOrDefault(from, Set.of()));
    while (!open.isEmpty()) {
      String next = open.pop();
      if (reached.add(next)) {
        open.addAll(all.getOrDefault(next, Set.of()));
      }
    }
    return reached;
  }

  /** How a room is called in the code. */
  String title(String room) {
    return room.isEmpty() ? within.substring(within.lastIndexOf('.') + 1) : room;
  }

  /** What a room is for: the first sentence of its package page. */
  String purpose(String room) throws IOException {
    String name = room.isEmpty() ? within : within + "." + room;
    String page = Files.readString(SOURCES.resolve(name.replace('.', '/') + "/package-info.java"));
    String text =
        page.substring(page.indexOf("/**") + 3, page.indexOf("*/"))
            .replaceAll("(?m)^ *\\* ?", "")
            .replaceAll("<[^>]+>", "")
            .replaceAll("\\s+", " ")
            .replaceAll("\\{@code ([^}]*)}", "$1")
            .replaceAll("\\{@link(?:plain)? [^\\s}]+ ([^}]+)}", "$1")
            .replaceAll("\\{@link (?:[\\w.]+\\.)?(\\w+)}", "$1")
            .strip();
    return text.replaceFirst("(?<=[A-Za-z0-9)])[.;] .*", "").replaceFirst("\\.$", "");
  }
}
