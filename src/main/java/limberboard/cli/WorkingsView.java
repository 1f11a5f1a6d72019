package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.KnownUnit;
import limberboard.workings.QuantityWords;
import limberboard.workings.sums.Input;
import limberboard.workings.sums.PutIn;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Result;
import limberboard.workings.sums.Sum;
import limberboard.workings.sums.Sums;

/** Workings as {@code --json} prints them. */
final class WorkingsView {
  private WorkingsView() {}

  /** A working in the list. */
  record Listed(
      String id,
      String title,
      String answers,
      List<Entry> inputs,
      String formula,
      String holds,
      String source) {
    static List<Listed> all(Sums sums) {
      return sums.all().stream().map(Listed::of).toList();
    }

    private static Listed of(Sum sum) {
      return new Listed(
          sum.id(),
          sum.text().title(),
          sum.text().answers(),
          sum.inputs().stream().map(Entry::of).toList(),
          sum.text().formula(),
          sum.text().holds(),
          sum.text().source());
    }
  }

  /** An input in the list; {@code unit}, {@code least} and {@code most} of numbers only. */
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Entry(
      String id,
      String title,
      Optional<String> unit,
      Optional<Double> least,
      Optional<Double> most,
      Optional<List<String>> choices,
      String usual) {
    private static Entry of(Input input) {
      if (input instanceof Input.Number number) {
        return new Entry(
            input.id(),
            input.title(),
            Optional.of(number.unit().symbol()),
            Optional.of(number.allowed().least()),
            Optional.of(number.allowed().most()),
            Optional.empty(),
            input.usualText());
      }
      return new Entry(
          input.id(),
          input.title(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.of(((Input.Choice) input).words()),
          input.usualText());
    }
  }

  /** A reckoned working. */
  record Reckoned(
      String id,
      String title,
      List<InputView> inputs,
      List<Outcome> results,
      List<String> working,
      List<String> warnings,
      String source) {
    static Reckoned of(Sum sum, PutIn put, Reckoning.Done done) {
      List<String> warnings =
          java.util.stream.Stream.concat(put.notes().stream(), done.answer().warnings().stream())
              .toList();
      return new Reckoned(
          sum.id(),
          sum.text().title(),
          done.put().stream()
              .map(each -> new InputView(each.input().id(), each.text(), each.usual()))
              .toList(),
          done.answer().results().stream().map(Outcome::of).toList(),
          done.answer().working(),
          warnings,
          sum.text().source());
    }
  }

  /** What was put in. */
  record InputView(String id, String value, boolean usual) {}

  /** A result; {@code value} and {@code unit} of quantities only, not rounded. */
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Outcome(
      String id, String title, String text, Optional<Double> value, Optional<String> unit) {
    private static Outcome of(Result result) {
      String text = result.text(QuantityWords.METRIC);
      if (result instanceof Result.Reckoned reckoned) {
        return new Outcome(
            result.id(),
            result.title(),
            text,
            Optional.of(reckoned.quantity().getValue().doubleValue()),
            KnownUnit.ownOf(reckoned.quantity()).map(KnownUnit::symbol));
      }
      return new Outcome(result.id(), result.title(), text, Optional.empty(), Optional.empty());
    }
  }
}
