package limberboard.workings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.library.page.Head;
import limberboard.library.page.Material;
import limberboard.library.page.Material.Pack;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.MaterialUse.Bead;
import limberboard.library.page.MaterialUse.Coat;
import limberboard.library.page.MaterialUse.Cord;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.Exposure;
import limberboard.library.value.MaterialGroup;
import limberboard.library.value.QuantityText;
import limberboard.library.value.Range;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/** Materials, uses and a boat for the tests of workings. */
final class Fixtures {
  private Fixtures() {}

  /** A boat whose model knows a gasket of 2.05 m, 2.2 l of oil and 6 shrouds. */
  static Boat boat() {
    Map<String, Amount.Fixed> measures =
        Map.of("gasket", fixed("2.05 m"), "oil", fixed("2.2 l"), "shrouds", fixed("6"));
    Model model =
        new Model(
            Range.parse("2010/.."),
            null,
            new Model.Drawing("side.svg", "top.svg"),
            List.of(),
            List.of(),
            null,
            measures,
            null,
            null,
            null,
            null);
    return new Boat(
        "avocet",
        "Avocet",
        new Page<>("cruiser", "articles/models/cruiser.md", head("Cruiser"), model, "", 1),
        1,
        2012,
        Optional.empty(),
        Use.PRIVATE,
        Water.SALT,
        Exposure.USUAL,
        Map.of(),
        Optional.empty(),
        "",
        List.of());
  }

  static Amount.Fixed fixed(String text) {
    return new Amount.Fixed(QuantityText.parse(text));
  }

  /** {@code 400 mm}, {@code gasket} or {@code gasket*1.1}. */
  static Amount amount(String text) {
    if (Character.isDigit(text.charAt(0))) {
      return fixed(text);
    }
    String[] parts = text.split("\\*");
    return new Amount.Measured(parts[0], parts.length > 1 ? Double.parseDouble(parts[1]) : 1);
  }

  /** A use of sealant of one kind; second and third may be null. */
  static MaterialUse use(String kind, String first, String second, String third) {
    Optional<Amount> plain = Optional.of(amount(first));
    return switch (kind) {
      case "bead" ->
          use(null, new Bead(amount(first), amount(second), amount(third)), null, null, null);
      case "coat" -> use(null, null, new Coat(amount(first), amount(second)), null, null);
      case "cord" ->
          use(
              null,
              null,
              null,
              new Cord(amount(first), Optional.ofNullable(second).map(Fixtures::amount)),
              null);
      case "pieces" -> use(null, null, null, null, plain);
      default -> use(plain, null, null, null, null);
    };
  }

  private static MaterialUse use(
      Optional<Amount> amount, Bead bead, Coat coat, Cord cord, Optional<Amount> pieces) {
    return new MaterialUse(
        "sealant",
        Condition.ALWAYS,
        "",
        amount,
        Optional.ofNullable(bead),
        Optional.ofNullable(coat),
        Optional.ofNullable(cord),
        pieces,
        List.of());
  }

  /** A material without packs. */
  static Page<Material> material(String unit) {
    return material(unit, List.of());
  }

  /** A material with packs. */
  static Page<Material> material(String unit, List<Pack> packs) {
    CountingUnit counted = CountingUnit.valueOf(unit.toUpperCase(Locale.ROOT));
    Material material =
        new Material(
            MaterialGroup.SEALANT,
            Optional.of(counted),
            packs,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null);
    return new Page<>("sealant", "articles/materials/sealant.md", head("Sealant"), material, "", 1);
  }

  static Pack pack(String name, String holds) {
    return new Pack(name, fixed(holds));
  }

  private static Head head(String title) {
    return new Head(title, null, null, null, null, null, null, null);
  }
}
