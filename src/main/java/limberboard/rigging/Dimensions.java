package limberboard.rigging;

import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;
import limberboard.words.Sentences;

/**
 * The rig dimensions and measures of one model. Immutable.
 *
 * @param page the model's page
 */
record Dimensions(Page<Model> page) {

  /** A dimension in metres; empty when the page gives none of this name, or it is no length. */
  OptionalDouble metres(String name) {
    return given(name).map(fixed -> KnownUnit.METRES.of(fixed.quantity())).orElse(NONE);
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private Optional<Amount.Fixed> given(String name) {
    Model model = page.details();
    return Optional.ofNullable(model.rig().get(name))
        .or(() -> Optional.ofNullable(model.measures().get(name)));
  }

  /** What to tell the owner about a dimension that is not to be had. */
  String open(String name) {
    return given(name).isPresent()
        ? "on the page of the " + page.title() + ", " + spoken(name) + " is no length"
        : "the page of the " + page.title() + " gives no " + spoken(name) + ": measure it";
  }

  /** A dimension as people say it. */
  static String spoken(String name) {
    return Sentences.spoken(name);
  }
}
