package limberboard.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Check;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Condition;

/**
 * Which cautions work must carry, derived from the headers and the text line by line, without the
 * program's own way of doing it.
 *
 * @param library the pages
 * @param boat the boat on the day
 */
record WantedCautions(Library library, Fitting boat) {
  private static final Pattern LINK = Pattern.compile("\\]\\([^)]*cautions/([a-z0-9-]+)\\.md");
  private static final Pattern HEADING = Pattern.compile("^(#{1,6}) +(.*?) *$");

  /** Of a procedure. */
  Set<String> of(Page<Procedure> page) {
    Set<String> wanted = new TreeSet<>(page.details().cautions());
    wanted.addAll(linked(page));
    for (MaterialUse use : page.details().materials()) {
      if (boat.fits(use.fits())) {
        wanted.addAll(ofThing(use.use()));
      }
    }
    wanted.addAll(ofTools(page.details().tools()));
    return wanted;
  }

  /** Of a check. */
  Set<String> of(Check check) {
    Set<String> wanted = new TreeSet<>(check.cautions());
    wanted.addAll(ofTools(check.tools()));
    return wanted;
  }

  private Set<String> ofTools(List<ToolUse> tools) {
    Set<String> wanted = new TreeSet<>();
    for (ToolUse use : tools) {
      if (boat.fits(use.fits())) {
        wanted.addAll(ofThing(use.use()));
      }
    }
    return wanted;
  }

  /** Of a material or tool. */
  Set<String> ofThing(String id) {
    Set<String> wanted = new TreeSet<>();
    library
        .material(id)
        .ifPresent(
            page -> {
              wanted.addAll(page.details().cautions());
              wanted.addAll(linked(page));
            });
    return wanted;
  }

  private Set<String> linked(Page<?> page) {
    Set<String> wanted = new TreeSet<>();
    Map<Integer, Boolean> hidden = new LinkedHashMap<>();
    for (String line : page.body().lines().toList()) {
      Matcher heading = HEADING.matcher(line);
      if (heading.matches()) {
        int level = heading.group(1).length();
        hidden.keySet().removeIf(outer -> outer >= level);
        Condition only = page.head().onlyFor().getOrDefault(heading.group(2), Condition.ALWAYS);
        hidden.put(level, !boat.fits(only));
      }
      Matcher link = LINK.matcher(line);
      while (!hidden.containsValue(true) && link.find()) {
        if (library.caution(link.group(1)).isPresent()) {
          wanted.add(link.group(1));
        }
      }
    }
    return wanted;
  }
}
