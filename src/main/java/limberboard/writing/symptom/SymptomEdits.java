package limberboard.writing.symptom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Check;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.form.FieldValue;
import limberboard.writing.form.HeaderForm;
import limberboard.writing.start.IdWords;

/**
 * Changes to a symptom's table. Each replaces the letters of what it is about and leaves everything
 * else in the page as it stands; what comes out is read again and must say what was meant. Where
 * that cannot be, or what was typed is not right there, {@link Unchangeable} says why in a
 * sentence, and nothing has changed.
 *
 * @param table the table that is changed
 */
public record SymptomEdits(SymptomTable table) {
  private static final int MOST_ANSWERS = 6;
  private static final String FINDS = "finds";
  private static final String ANSWERS = "answers";

  private HeaderChange change() {
    return HeaderChange.of(table.page(), table.root());
  }

  private static List<String> cause(int number, String... keys) {
    return path("causes", number, keys);
  }

  private static List<String> check(int number, String... keys) {
    return path("checks", number, keys);
  }

  private static List<String> path(String list, int number, String... keys) {
    List<String> path = new ArrayList<>(List.of(list, Integer.toString(number)));
    path.addAll(List.of(keys));
    return path;
  }

  /** What the page is called. */
  public PageText title(String text) throws Unchangeable {
    return change().set(List.of("title"), needed(text, "A page needs a title.")).page();
  }

  /** Where on the boat it is noticed, by zone ids; none takes the key out. */
  public PageText zones(List<String> ids) throws Unchangeable {
    HeaderForm form = HeaderForm.of(Kind.SYMPTOM, table.page()).orElseThrow();
    return ids.isEmpty()
        ? form.clear("zones").page()
        : form.set("zones", new FieldValue.Many(ids)).page();
  }

  /** What a cause is called; its id stays, since recorded cases name it. */
  public PageText causeTitle(int cause, String text) throws Unchangeable {
    return change().set(cause(cause, "title"), needed(text, "A cause needs a name.")).page();
  }

  /** How common a cause is against the others; an empty text takes it out. */
  public PageText weight(int cause, String text) throws Unchangeable {
    return figure(cause(cause, "weight"), text, "A weight is a number greater than 0, such as 3.");
  }

  /** Which procedure mends it, by its id; an empty text takes it out. */
  public PageText mend(int cause, String id) throws Unchangeable {
    return change().set(cause(cause, "mend"), id.strip()).page();
  }

  /** What a check asks; its id stays. */
  public PageText ask(int check, String text) throws Unchangeable {
    return change().set(check(check, "ask"), needed(text, "A check needs a question.")).page();
  }

  /** How a check is done; an empty text takes it out. */
  public PageText how(int check, String text) throws Unchangeable {
    return change().set(check(check, "how"), text.strip()).page();
  }

  /** How long a check takes; an empty text takes it out. */
  public PageText minutes(int check, String text) throws Unchangeable {
    return figure(check(check, "minutes"), text, "Minutes are a number greater than 0, such as 5.");
  }

  private PageText figure(List<String> path, String text, String right) throws Unchangeable {
    String figure = text.strip().replaceFirst("^\\.", "0.");
    if (!figure.isEmpty() && TypedFigures.positive(figure).isEmpty()) {
      throw new Unchangeable(right);
    }
    return change().set(path, figure).page();
  }

  private static String needed(String text, String right) throws Unchangeable {
    if (text.isBlank()) {
      throw new Unchangeable(right);
    }
    return text.strip().replaceAll("\\s+", " ");
  }

  /**
   * How likely an answer is when a cause is there.
   *
   * @param check the check's number
   * @param answer one of its answers
   * @param cause a cause's id, or {@link Check#OTHERS}
   * @param likelihood a word of the scale or a number from 0 to 1; empty takes it out
   */
  public PageText likelihood(int check, String answer, String cause, Optional<String> likelihood)
      throws Unchangeable {
    if (likelihood.filter(word -> !LikelihoodKeys.isLikelihood(word)).isPresent()) {
      throw new Unchangeable(
          "\u201c" + likelihood.get() + "\u201d is no likelihood. Enter lists the words.");
    }
    if (cause.isEmpty()) {
      throw new Unchangeable("This cause has no id yet. Give it one in the header.");
    }
    return change().set(check(check, FINDS, answer, cause), likelihood.orElse("")).page();
  }

  /** A further cause, at the end, with a weight as common as the others have it. */
  public PageText addCause(String title) throws Unchangeable {
    String name = needed(title, "A cause needs a name.");
    Map<String, String> entry = new LinkedHashMap<>();
    entry.put("id", IdWords.unique(name, "cause", table.takenByCauses()));
    entry.put("title", name);
    entry.put("weight", "1");
    entry.put("mend", "");
    return change().add(List.of("causes"), entry, List.of()).page();
  }

  /** A further check, at the end, without answers. */
  public PageText addCheck(String ask) throws Unchangeable {
    String question = needed(ask, "A check needs a question.");
    Map<String, String> entry = new LinkedHashMap<>();
    entry.put("id", IdWords.unique(question, "check", table.takenByChecks()));
    entry.put("ask", question);
    entry.put("how", "");
    entry.put("minutes", "");
    return change().add(List.of("checks"), entry, List.of(ANSWERS)).page();
  }

  /** Without a cause, and without what the checks say of it. */
  public PageText removeCause(int number) throws Unchangeable {
    String id = table.causes().get(number).id();
    HeaderChange change = change();
    boolean alone = table.causes().stream().filter(each -> each.id().equals(id)).count() == 1;
    for (TableCheck check : alone ? table.checks() : List.<TableCheck>of()) {
      for (String answer : check.finds().keySet()) {
        if (check.likelihood(answer, id).isPresent()) {
          change = change.set(check(check.number(), FINDS, answer, id), "");
        }
      }
    }
    return change.remove(List.of("causes"), number).page();
  }

  /** Without a check. */
  public PageText removeCheck(int number) throws Unchangeable {
    return change().remove(List.of("checks"), number).page();
  }

  /** A further answer of a check. */
  public PageText addAnswer(int number, String text) throws Unchangeable {
    TableCheck check = table.checks().get(number);
    if (check.answers().size() >= MOST_ANSWERS) {
      throw new Unchangeable("A check has six answers at most.");
    }
    List<String> answers = new ArrayList<>(check.answers());
    answers.add(answer(check, text));
    return change().list(check(number, ANSWERS), answers).page();
  }

  private static String answer(TableCheck check, String text) throws Unchangeable {
    String id = IdWords.of(text);
    if (id.isEmpty()) {
      throw new Unchangeable("An answer is a word or a few.");
    }
    if (check.answers().contains(id)) {
      throw new Unchangeable("This check has that answer already.");
    }
    return id;
  }

  /** Another word for an answer, with everything that names it. */
  public PageText renameAnswer(int number, int place, String text) throws Unchangeable {
    TableCheck check = table.checks().get(number);
    String old = check.answers().get(place);
    if (IdWords.of(text).equals(old)) {
      return table.page();
    }
    String now = answer(check, text);
    List<String> answers = new ArrayList<>(check.answers());
    answers.set(place, now);
    HeaderChange change = change().list(check(number, ANSWERS), answers);
    for (String key : List.of(FINDS, "said-as")) {
      change = change.rename(check(number, key, old), now);
    }
    return change.replaceIn(check(number, "safe-when"), old, now).page();
  }

  /** Without an answer, and without what it says of the causes. */
  public PageText removeAnswer(int number, int place) throws Unchangeable {
    TableCheck check = table.checks().get(number);
    String old = check.answers().get(place);
    List<String> answers = new ArrayList<>(check.answers());
    answers.remove(place);
    HeaderChange change = change().list(check(number, ANSWERS), answers);
    for (String key : List.of(FINDS, "said-as")) {
      change = change.set(check(number, key, old), "");
    }
    return change.page();
  }
}
