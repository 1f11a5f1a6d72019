package limberboard.workings.sums;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import limberboard.library.check.FurtherCheck;
import limberboard.library.page.Page;
import limberboard.library.page.SumUse;
import limberboard.library.problem.Nearest;
import limberboard.library.value.Amount;

/** Checks the key {@code workings} of pages against the sums there are. Immutable. */
public final class SumUseCheck implements FurtherCheck {
  private final Sums sums;

  /** A check against these sums. */
  public SumUseCheck(Sums sums) {
    this.sums = sums;
  }

  @Override
  public void check(Page<?> page, Findings findings) {
    List<SumUse> uses = page.details().workings();
    for (int i = 0; i < uses.size(); i++) {
      String pointer = "/workings/" + i;
      SumUse use = uses.get(i);
      Optional<Sum> sum = sums.sum(use.use());
      sum.ifPresentOrElse(
          known -> inputs(known, use.with(), pointer + "/with/", findings),
          () -> noSum(use.use(), pointer + "/use", findings));
    }
  }

  private void noSum(String id, String pointer, Findings findings) {
    findings.error(
        pointer,
        "there is no working \"" + id + "\"",
        Nearest.advice(id, sums.ids(), "there are " + String.join(", ", sums.ids())));
  }

  private static void inputs(Sum sum, Map<String, Amount> with, String pointer, Findings findings) {
    List<String> ids = sum.inputs().stream().map(Input::id).toList();
    with.forEach(
        (id, amount) -> {
          Optional<Input> input =
              sum.inputs().stream().filter(each -> each.id().equals(id)).findFirst();
          if (input.isEmpty()) {
            findings.error(
                pointer + id,
                "is no input of " + sum.id(),
                Nearest.advice(id, ids, "there are " + String.join(", ", ids)));
          } else {
            value(input.get(), amount, pointer + id, findings);
          }
        });
  }

  private static void value(Input input, Amount amount, String pointer, Findings findings) {
    if (input instanceof Input.Choice choice) {
      String word = amount instanceof Amount.Measured named ? named.measure() : "";
      if (choice.option(word).isEmpty()) {
        findings.error(
            pointer,
            word.isEmpty() ? "is a quantity here" : "\"" + word + "\" cannot be chosen here",
            Nearest.advice(word, choice.words(), "choose " + choice.allowedText()));
      }
    } else if (input instanceof Input.Number number) {
      if (amount instanceof Amount.Fixed fixed) {
        quantity(number, fixed.quantity(), pointer, findings);
      } else if (amount instanceof Amount.Measured named) {
        measure(number, named.measure(), pointer, findings);
      }
    }
  }

  private static void quantity(
      Input.Number input, Quantity<?> quantity, String pointer, Findings findings) {
    Reckoner.obstacle(input, quantity)
        .ifPresent(wrong -> findings.error(pointer, wrong.what(), wrong.right()));
  }

  private static void measure(
      Input.Number input, String measure, String pointer, Findings findings) {
    List<Quantity<?>> known = findings.measured(measure);
    if (known.isEmpty()) {
      findings.noMeasure(measure, pointer);
    }
    known.stream()
        .filter(quantity -> !input.unit().measures(quantity))
        .findFirst()
        .ifPresent(quantity -> quantity(input, quantity, pointer, findings));
  }
}
