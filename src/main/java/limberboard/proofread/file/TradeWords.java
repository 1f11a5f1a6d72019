package limberboard.proofread.file;

import java.util.List;
import java.util.Optional;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;
import limberboard.proofread.text.Measure;

/**
 * What a proofreader looks for, as the library's own file says it.
 *
 * @param cautions words that call for a caution
 * @param needs words that need a tool or an access
 * @param uses words that use a tool without naming it
 * @param orders what makes safe, and what it has to stand before
 * @param figures figures that have to be the same on all pages
 * @param names names of things besides those on their own pages
 * @param common names that mean too much on a boat to name one thing
 * @param actions what a step can begin with that is an action
 */
public record TradeWords(
    List<Call> cautions,
    List<Need> needs,
    List<Usage> uses,
    List<Order> orders,
    List<Agreed> figures,
    List<Usage> names,
    List<String> common,
    List<String> actions) {
  /** Looks for nothing. */
  public static final TradeWords NOTHING =
      new TradeWords(null, null, null, null, null, null, null, null);

  /** Absent entries become empty ones. */
  public TradeWords {
    cautions = EmptyValues.list(cautions);
    needs = EmptyValues.list(needs);
    uses = EmptyValues.list(uses);
    orders = EmptyValues.list(orders);
    figures = EmptyValues.list(figures);
    names = EmptyValues.list(names);
    common = EmptyValues.list(common);
    actions = EmptyValues.list(actions);
  }

  /**
   * Words that call for a caution.
   *
   * @param words any of them
   * @param carry ids of cautions, any of which will do
   * @param unless words in the same sentence with which nothing is called for
   */
  public record Call(
      @Required List<String> words, @Required List<String> carry, List<String> unless) {
    /** Absent entries become empty ones. */
    public Call {
      words = words == null ? null : EmptyValues.list(words);
      carry = carry == null ? null : EmptyValues.list(carry);
      unless = EmptyValues.list(unless);
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
      @Required List<String> words, List<String> tools, List<String> access, List<String> unless) {
    /** Absent entries become empty ones. */
    public Need {
      words = words == null ? null : EmptyValues.list(words);
      tools = EmptyValues.list(tools);
      access = EmptyValues.list(access);
      unless = EmptyValues.list(unless);
    }
  }

  /**
   * Words that use a tool without naming it.
   *
   * @param thing id of a tool or material
   * @param words any of them
   */
  public record Usage(@Required String thing, @Required List<String> words) {
    /** Absent entries become empty ones. */
    public Usage {
      words = words == null ? null : EmptyValues.list(words);
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
      @Required List<String> first,
      @Required List<String> then,
      @Required String why,
      List<String> with,
      boolean always) {
    /** Absent entries become empty ones. */
    public Order {
      first = first == null ? null : EmptyValues.list(first);
      then = then == null ? null : EmptyValues.list(then);
      with = EmptyValues.list(with);
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
      @Required String about,
      @Required List<String> words,
      @Required Measure measure,
      List<String> unless,
      Optional<Double> least,
      Optional<Double> most) {
    /** Absent entries become empty ones. */
    public Agreed {
      words = words == null ? null : EmptyValues.list(words);
      unless = EmptyValues.list(unless);
      least = EmptyValues.optional(least);
      most = EmptyValues.optional(most);
    }
  }
}
