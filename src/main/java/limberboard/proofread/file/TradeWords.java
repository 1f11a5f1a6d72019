package limberboard.proofread.file;

import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.EmptyValues;
import limberboard.proofread.text.Measure;

/**
 * What a proofreader looks for, as the library's own file says it.
 *
 * @param cautions words and places that call for a caution
 * @param needs words that need a tool or an access
 * @param brought what is brought to the work and has no page
 * @param uses words that use a tool without naming it
 * @param orders what makes safe, and what it has to stand before
 * @param back what is taken off or shut for the work, and what puts it back
 * @param figures figures that have to be the same on all pages
 * @param carried ids of what is worn or carried to every work, and listed though no step says so
 * @param names names of things besides those on their own pages
 * @param common names that mean too much on a boat to name one thing
 * @param actions what a step can begin with that is an action
 * @param readAgain how long it holds that a page was read in full
 */
public record TradeWords(
    List<Call> cautions,
    List<Need> needs,
    List<Brought> brought,
    List<Usage> uses,
    List<Order> orders,
    List<Back> back,
    List<Agreed> figures,
    List<String> carried,
    List<Usage> names,
    List<String> common,
    List<String> actions,
    Optional<Period> readAgain) {
  /** Looks for nothing. */
  public static final TradeWords NOTHING =
      new TradeWords(null, null, null, null, null, null, null, null, null, null, null, null);

  /** Absent entries become empty ones. */
  public TradeWords {
    cautions = EmptyValues.list(cautions);
    needs = EmptyValues.list(needs);
    brought = EmptyValues.list(brought);
    uses = EmptyValues.list(uses);
    orders = EmptyValues.list(orders);
    back = EmptyValues.list(back);
    figures = EmptyValues.list(figures);
    carried = EmptyValues.list(carried);
    names = EmptyValues.list(names);
    common = EmptyValues.list(common);
    actions = EmptyValues.list(actions);
    readAgain = EmptyValues.optional(readAgain);
  }

  /** The same without entries that lack what they need; those have been reported. */
  TradeWords usable() {
    return new TradeWords(
        whole(cautions),
        whole(needs),
        whole(brought),
        whole(uses),
        whole(orders),
        whole(back),
        whole(figures),
        carried,
        whole(names),
        common,
        actions,
        readAgain);
  }

  private static <E extends Entry> List<E> whole(List<E> entries) {
    return entries.stream().filter(each -> each.lacks().isEmpty()).toList();
  }

  /** An entry of the file. */
  sealed interface Entry permits Call, Need, Brought, Usage, Order, Back, Agreed {
    /** Keys that it needs and that say nothing. */
    List<String> lacks();
  }

  private static List<String> lacking(Map<String, Boolean> said) {
    return said.entrySet().stream()
        .filter(each -> !each.getValue())
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * What calls for a caution: words, or the place where the work is done.
   *
   * @param words any of them
   * @param access ids of what is opened or done first, any of which brings the danger with it
   * @param carry ids of cautions, any of which will do
   * @param unless words in the same sentence with which nothing is called for
   */
  public record Call(
      List<String> words, List<String> access, List<String> carry, List<String> unless)
      implements Entry {
    /** Absent entries become empty ones. */
    public Call {
      words = EmptyValues.list(words);
      access = EmptyValues.list(access);
      carry = EmptyValues.list(carry);
      unless = EmptyValues.list(unless);
    }

    @Override
    public List<String> lacks() {
      return lacking(
          Map.of("words", !words.isEmpty() || !access.isEmpty(), "carry", !carry.isEmpty()));
    }
  }

  /**
   * Words that need a tool, or an access.
   *
   * @param words any of them
   * @param tools ids of tools and materials, any of which will do
   * @param access ids of what is opened first, any of which will do
   * @param unless words in the same sentence with which nothing is needed
   */
  public record Need(
      List<String> words, List<String> tools, List<String> access, List<String> unless)
      implements Entry {
    /** Absent entries become empty ones. */
    public Need {
      words = EmptyValues.list(words);
      tools = EmptyValues.list(tools);
      access = EmptyValues.list(access);
      unless = EmptyValues.list(unless);
    }

    @Override
    public List<String> lacks() {
      return lacking(
          Map.of("words", !words.isEmpty(), "tools", !tools.isEmpty() || !access.isEmpty()));
    }
  }

  /**
   * Things that are brought to the work and have no page, so that they can be on no list.
   *
   * @param words what they are called, any of them
   * @param listed ids of tools and materials that are the same thing where they are on the list
   * @param unless words in the same sentence with which nothing is brought
   */
  public record Brought(List<String> words, List<String> listed, List<String> unless)
      implements Entry {
    /** Absent entries become empty ones. */
    public Brought {
      words = EmptyValues.list(words);
      listed = EmptyValues.list(listed);
      unless = EmptyValues.list(unless);
    }

    @Override
    public List<String> lacks() {
      return lacking(Map.of("words", !words.isEmpty()));
    }
  }

  /**
   * Words that use a tool without naming it.
   *
   * @param thing id of a tool or material
   * @param words any of them
   */
  public record Usage(String thing, List<String> words) implements Entry {
    /** Absent entries become empty ones. */
    public Usage {
      thing = EmptyValues.text(thing);
      words = EmptyValues.list(words);
    }

    @Override
    public List<String> lacks() {
      return lacking(Map.of("thing", !thing.isEmpty(), "words", !words.isEmpty()));
    }
  }

  /**
   * What makes safe, and what it has to stand before.
   *
   * @param first words of what makes safe, any of them
   * @param then words of what it makes safe, any of them
   * @param why what happens otherwise
   * @param with words that have to stand on the page for the order to hold, any of them; none: it
   *     always holds
   * @param always whether something is wrong also where nothing makes it safe at all
   */
  public record Order(
      List<String> first, List<String> then, String why, List<String> with, boolean always)
      implements Entry {
    /** Absent entries become empty ones. */
    public Order {
      why = EmptyValues.text(why);
      first = EmptyValues.list(first);
      then = EmptyValues.list(then);
      with = EmptyValues.list(with);
    }

    @Override
    public List<String> lacks() {
      return lacking(Map.of("first", !first.isEmpty(), "then", !then.isEmpty()));
    }
  }

  /**
   * What is taken off, out or shut for the work, and has to be put back at its end.
   *
   * @param off words that take it away, any of them
   * @param on words that put it back, or say that it stays away, any of them
   * @param unless words in the same sentence as the first with which nothing is owed
   */
  public record Back(List<String> off, List<String> on, List<String> unless) implements Entry {
    /** Absent entries become empty ones. */
    public Back {
      off = EmptyValues.list(off);
      on = EmptyValues.list(on);
      unless = EmptyValues.list(unless);
    }

    @Override
    public List<String> lacks() {
      return lacking(Map.of("off", !off.isEmpty(), "on", !on.isEmpty()));
    }
  }

  /**
   * A figure that has to be the same on all pages that have to do with one another.
   *
   * @param about what it is, in a few words
   * @param words words of the sentences that say it, any of them
   * @param measure what is measured: {@code time}, {@code length}, {@code pull} and so on
   * @param unless words in the same sentence with which it is another figure
   * @param least the least that such a figure can be, in the measure's unit; a smaller one is
   *     another figure
   * @param most the most that it can be
   */
  public record Agreed(
      String about,
      List<String> words,
      Optional<Measure> measure,
      List<String> unless,
      Optional<Double> least,
      Optional<Double> most)
      implements Entry {
    /** Absent entries become empty ones. */
    public Agreed {
      about = EmptyValues.text(about);
      words = EmptyValues.list(words);
      measure = EmptyValues.optional(measure);
      unless = EmptyValues.list(unless);
      least = EmptyValues.optional(least);
      most = EmptyValues.optional(most);
    }

    @Override
    public List<String> lacks() {
      return lacking(
          Map.of(
              "about",
              !about.isEmpty(),
              "words",
              !words.isEmpty(),
              "measure",
              measure.isPresent()));
    }
  }
}
