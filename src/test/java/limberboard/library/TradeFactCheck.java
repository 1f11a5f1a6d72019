package limberboard.library;

import java.time.Period;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Amount;
import limberboard.library.value.Interval;
import limberboard.library.value.Word;
import tech.units.indriya.unit.Units;

/** Whether one page holds a {@link TradeFact}; the kinds of check are told in its file. */
record TradeFactCheck(Page<Procedure> page) {

  boolean holds(TradeFact fact) {
    List<String> values = fact.values();
    String first = values.get(0);
    return switch (fact.check()) {
      case "says" -> says(first);
      case "in order" -> inOrder(first, values.get(1));
      case "every" -> between(interval().flatMap(Interval::every), values);
      case "from age" -> between(interval().flatMap(Interval::fromAge), values);
      case "seasons" -> seasons(Integer.parseInt(first), Integer.parseInt(values.get(1)));
      case "phase" -> interval().flatMap(Interval::phase).filter(is -> is(is, first)).isPresent();
      case "skill" -> is(page.details().skill(), first);
      case "before" -> page.details().before().contains(first);
      case "uses" -> uses(first).findAny().isPresent();
      case "does not use" ->
          !page.details().materials().isEmpty() && uses(first).findAny().isEmpty();
      case "bead of" -> uses(first).anyMatch(use -> use.bead().isPresent());
      case "at most" -> atMost(Integer.parseInt(first), values.get(1));
      case "length of" ->
          lengthOf(first, Double.parseDouble(values.get(1)), Double.parseDouble(values.get(2)));
      case "measured" -> measured(first, values.get(1));
      default -> throw new IllegalArgumentException("no such check: " + fact);
    };
  }

  private boolean says(String words) {
    String pattern = Pattern.quote(words).replace("...", "\\E.*\\Q");
    return Pattern.compile(pattern).matcher(allWords()).find();
  }

  private boolean inOrder(String one, String then) {
    String body = plain(page.body());
    int found = body.indexOf(one);
    return found >= 0 && body.indexOf(then, found) > found;
  }

  private boolean seasons(int least, int most) {
    return interval()
        .filter(found -> found.seasons().isPresent())
        .filter(
            found -> {
              int number = found.seasons().getAsInt();
              DoubleStream factors = found.factors().stream().mapToDouble(Interval.Factor::times);
              return DoubleStream.concat(DoubleStream.of(1), factors)
                  .mapToLong(factor -> Math.round(number * factor))
                  .allMatch(seasons -> seasons >= least && seasons <= most);
            })
        .isPresent();
  }

  private boolean atMost(int pieces, String material) {
    return uses(material)
        .flatMap(use -> use.pieces().stream())
        .anyMatch(
            amount ->
                amount instanceof Amount.Fixed fixed
                    && fixed.quantity().getValue().intValue() <= pieces);
  }

  private boolean lengthOf(String cord, double least, double most) {
    return uses(cord)
        .flatMap(use -> use.cord().stream())
        .anyMatch(
            each ->
                each.length() instanceof Amount.Fixed fixed
                    && metres(fixed) >= least
                    && metres(fixed) <= most);
  }

  /** Metres of a fixed amount of length. */
  static double metres(Amount.Fixed amount) {
    return amount.quantity().asType(Length.class).to(Units.METRE).getValue().doubleValue();
  }

  private boolean measured(String material, String measure) {
    return uses(material)
        .flatMap(use -> use.amount().or(() -> use.cord().map(MaterialUse.Cord::length)).stream())
        .anyMatch(
            amount -> amount instanceof Amount.Measured named && named.measure().equals(measure));
  }

  private Stream<MaterialUse> uses(String material) {
    return page.details().materials().stream().filter(use -> use.use().equals(material));
  }

  private Optional<Interval> interval() {
    return page.details().interval();
  }

  private static boolean is(Word word, String text) {
    return word.word().equals(text);
  }

  private static boolean between(Optional<Period> period, List<String> values) {
    return period
        .filter(found -> days(found) >= days(Period.parse(values.get(0))))
        .filter(found -> days(found) <= days(Period.parse(values.get(1))))
        .isPresent();
  }

  private static double days(Period period) {
    return period.toTotalMonths() * 30.4 + period.getDays();
  }

  private String allWords() {
    String looked =
        page.details().lookFor().map(look -> look.good() + "\n" + look.bad()).orElse("");
    return plain(page.head().summary() + "\n" + looked + "\n" + page.body());
  }

  /** Without links' addresses and emphasis, blanks run together, in small letters. */
  private static String plain(String markdown) {
    return markdown
        .replaceAll("\\]\\([^)]*\\)", "")
        .replaceAll("[\\[*]", "")
        .replaceAll("\\s+", " ")
        .toLowerCase(Locale.ROOT);
  }
}
