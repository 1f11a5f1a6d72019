package limberboard.writing.symptom;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import limberboard.library.header.Ids;
import limberboard.words.CountWords;
import limberboard.writing.PageText;

/**
 * A symptom that is not finished yet, filled up so that it can be traced meanwhile: only to look at
 * the tree, never to be saved. Says what it took for granted.
 *
 * @param page a page with nothing left to be said
 * @param taken what was taken for granted, a sentence each
 */
public record DraftSymptom(PageText page, List<String> taken) {
  /** What stands for a mend that nobody has named; there is no such page, so it is the yard's. */
  public static final String NO_MEND = "no-mend-yet";

  private static final String ALIKE = "1";
  private static final String QUICK = "5";

  /** Copies the list. */
  public DraftSymptom {
    taken = List.copyOf(taken);
  }

  /** Fills a table up; empty when there is nothing to trace yet. */
  public static Optional<DraftSymptom> of(SymptomTable table) {
    Filling filling = new Filling(table.root().deepCopy());
    return filling.filled()
        ? Optional.of(
            new DraftSymptom(
                new PageText("---\n" + filling.root.toPrettyString() + "\n---\n"), filling.taken()))
        : Optional.empty();
  }

  /** Fills a header up in place. */
  private static final class Filling {
    private final ObjectNode root;
    private int mends;
    private int weights;
    private int times;
    private int left;

    Filling(ObjectNode root) {
      this.root = root;
    }

    boolean filled() {
      for (String key : new String[] {"title", "system"}) {
        if (root.path(key).asText("").isEmpty()) {
          root.put(key, key.equals("title") ? "A new symptom" : "hull");
        }
      }
      ArrayNode causes = kept("causes", "title");
      causes.forEach(each -> cause((ObjectNode) each));
      ArrayNode checks = kept("checks", "ask");
      checks.forEach(each -> check((ObjectNode) each));
      return !causes.isEmpty();
    }

    /** The entries of a list that can be used: with an id that no other one has. */
    private ArrayNode kept(String list, String name) {
      ArrayNode kept = root.arrayNode();
      Set<String> ids = new HashSet<>();
      for (JsonNode each : root.path(list)) {
        boolean many = list.equals("causes") || each.path("answers").size() > 1;
        String id = each.path("id").asText("");
        if (many && Ids.isId(id) && ids.add(id)) {
          fill((ObjectNode) each, name, id);
          kept.add(each);
        } else {
          left++;
        }
      }
      root.set(list, kept);
      return kept;
    }

    private static boolean fill(ObjectNode entry, String key, String with) {
      boolean missing = !entry.path(key).isTextual() || entry.path(key).asText().isBlank();
      if (missing) {
        entry.put(key, with);
      }
      return missing;
    }

    private static boolean fillFigure(ObjectNode entry, String key, String with) {
      OptionalDouble figure = TypedFigures.positive(entry.path(key).asText(""));
      if (figure.isEmpty()) {
        entry.put(key, with);
      }
      return figure.isEmpty();
    }

    private void cause(ObjectNode cause) {
      mends += fill(cause, "mend", NO_MEND) ? 1 : 0;
      weights += fillFigure(cause, "weight", ALIKE) ? 1 : 0;
    }

    private void check(ObjectNode check) {
      fill(check, "how", check.path("ask").asText());
      times += fillFigure(check, "minutes", QUICK) ? 1 : 0;
      for (JsonNode row : check.path("finds")) {
        if (row instanceof ObjectNode words) {
          List<String> wrong = new ArrayList<>();
          words
              .properties()
              .forEach(
                  each -> {
                    if (!LikelihoodKeys.isLikelihood(each.getValue().asText(""))) {
                      wrong.add(each.getKey());
                    }
                  });
          words.remove(wrong);
        }
      }
    }

    List<String> taken() {
      List<String> taken = new ArrayList<>();
      say(taken, mends, "cause", "without a page to mend it: the yard mends it here");
      say(taken, weights, "cause", "without a weight: taken as 1");
      say(taken, times, "check", "without minutes: taken as 5");
      say(taken, left, "entry", "entries", "left out: too few answers, or no id of its own");
      return taken;
    }

    private static void say(List<String> taken, int count, String one, String what) {
      say(taken, count, one, one + "s", what);
    }

    private static void say(
        List<String> taken, int count, String one, String several, String what) {
      if (count > 0) {
        taken.add(CountWords.of(count, one, several) + " " + what);
      }
    }
  }
}
