package limberboard.boat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.header.YamlScalar;
import limberboard.library.header.YamlText;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Model;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * Makes the text of a {@code boat.yaml} say another boat: only the keys that differ are touched.
 * What the yard fitted anyway is not written down.
 */
final class BoatEdit {
  private static final String EQUIPMENT = "equipment";
  private static final String SEASON = "season";
  private static final String NOTE = "note";

  /** The keys in the order in which a new file has them. */
  private static final List<String> ORDER =
      List.of(
          "name",
          "model",
          "hull",
          "built",
          "launched",
          "bought",
          "use",
          "water",
          "exposure",
          EQUIPMENT,
          SEASON,
          NOTE);

  private final Boat was;
  private final Boat is;
  private YamlText yaml;

  /**
   * An edit.
   *
   * @param text the file's text, without a byte-order mark
   * @param was the boat that the text says
   * @param is the boat that it is to say
   */
  BoatEdit(String text, Boat was, Boat is) {
    this.yaml = new YamlText(text);
    this.was = was;
    this.is = is;
  }

  /** The text of a new boat's file. */
  static String text(Boat boat) {
    StringBuilder text = new StringBuilder();
    for (String key : ORDER) {
      if (key.equals(EQUIPMENT)) {
        equipment(text, boat);
      } else if (key.equals(SEASON)) {
        boat.season()
            .ifPresent(
                season -> text.append(SEASON).append(": ").append(flow(season)).append('\n'));
      } else {
        first(boat, key)
            .filter(value -> !value.equals(usual(key)))
            .ifPresent(value -> text.append(key).append(": ").append(value).append('\n'));
      }
    }
    return text.toString();
  }

  private static void equipment(StringBuilder text, Boat boat) {
    StringBuilder chosen = new StringBuilder();
    boat.equipment()
        .forEach(
            (id, choice) -> {
              if (!choice.equals(fitted(boat, id))) {
                chosen.append("  ").append(YamlScalar.word(id)).append(": ");
                chosen.append(YamlScalar.word(choice)).append('\n');
              }
            });
    if (!chosen.isEmpty()) {
      text.append(EQUIPMENT).append(":\n").append(chosen);
    }
  }

  /** What the yard fitted in the boat's year. */
  private static String fitted(Boat boat, String equipment) {
    return boat.model()
        .details()
        .equipment(equipment)
        .flatMap(each -> each.defaultFor(boat.built()))
        .map(Model.Choice::id)
        .orElse("");
  }

  private static String flow(Season season) {
    return "{from: "
        + YamlScalar.word(season.from().toString())
        + ", to: "
        + YamlScalar.word(season.to().toString())
        + "}";
  }

  /** The value of a key that has one line, bare. */
  private static Optional<String> bare(Boat boat, String key) {
    return switch (key) {
      case "name" -> Optional.of(boat.name());
      case "model" -> Optional.of(boat.model().id());
      case "hull" -> Optional.of(Integer.toString(boat.hull()));
      case "built" -> Optional.of(Integer.toString(boat.built()));
      case "launched" -> boat.launched().map(LogDay::write);
      case "bought" -> boat.bought().map(LogDay::write);
      case "use" -> Optional.of(boat.use().word());
      case "water" -> Optional.of(boat.water().word());
      case "exposure" -> Optional.of(boat.exposure().word());
      default -> Optional.of(boat.note()).filter(note -> !note.isEmpty());
    };
  }

  private static Optional<String> value(Boat boat, String key) {
    return bare(boat, key).map(bare -> isText(key) ? YamlScalar.text(bare) : YamlScalar.word(bare));
  }

  private static Optional<String> first(Boat boat, String key) {
    return key.equals(NOTE) && YamlScalar.isBlock(boat.note())
        ? Optional.of(YamlScalar.block(boat.note(), "\n"))
        : value(boat, key);
  }

  private static boolean isText(String key) {
    return key.equals("name") || key.equals(NOTE);
  }

  /** What a key says when it is left out. */
  private static String usual(String key) {
    return switch (key) {
      case "use" -> Use.PRIVATE.word();
      case "water" -> Water.SALT.word();
      case "exposure" -> Exposure.USUAL.word();
      default -> "";
    };
  }

  /**
   * The text with what differs.
   *
   * @throws Unchangeable when it is written so that it cannot be changed in place
   */
  String made() throws Unchangeable {
    for (String key : ORDER) {
      if (!key.equals(EQUIPMENT) && !key.equals(SEASON)) {
        set(key);
      }
    }
    if (!was.season().equals(is.season())) {
      season();
    }
    equipment();
    return yaml.text();
  }

  private void set(String key) throws Unchangeable {
    Optional<String> wanted = bare(is, key);
    if (wanted.equals(bare(was, key))) {
      return;
    }
    List<String> path = List.of(key);
    Optional<String> there = yaml.written(path);
    if (wanted.isEmpty()) {
      yaml = yaml.without(path);
    } else if (there.isPresent()) {
      String like = YamlScalar.like(there.get(), wanted.get(), !isText(key));
      yaml = yaml.replaced(path, written(key, wanted.get(), like));
    } else {
      String usual = value(is, key).orElseThrow();
      yaml = yaml.added(key, written(key, wanted.get(), usual), before(key));
    }
  }

  private String written(String key, String bare, String usual) throws Unchangeable {
    return key.equals(NOTE)
            && YamlScalar.isBlock(bare)
            && yaml.isOnLines()
            && yaml.endsItsLine(List.of(key))
        ? YamlScalar.block(bare, yaml.lineEnd())
        : usual;
  }

  private static List<String> before(String key) {
    return ORDER.subList(0, ORDER.indexOf(key));
  }

  private void season() throws Unchangeable {
    List<String> path = List.of(SEASON);
    if (is.season().isEmpty()) {
      yaml = yaml.without(path);
    } else if (yaml.keys(SEASON).containsAll(List.of("from", "to"))) {
      day("from", is.season().get().from().toString());
      day("to", is.season().get().to().toString());
    } else if (yaml.written(path).isPresent()) {
      yaml = yaml.replaced(path, flow(is.season().get()));
    } else {
      yaml = yaml.added(SEASON, flow(is.season().get()), before(SEASON));
    }
  }

  private void day(String key, String day) throws Unchangeable {
    List<String> path = List.of(SEASON, key);
    String there = yaml.written(path).orElse("");
    if (!there.replaceAll("[\"']", "").equals(day)) {
      yaml = yaml.replaced(path, YamlScalar.like(there, day, true));
    }
  }

  private void equipment() throws Unchangeable {
    for (String id : was.equipment().keySet()) {
      if (is.model().details().equipment(id).isEmpty()) {
        yaml = yaml.without(List.of(EQUIPMENT, id));
      }
    }
    Map<String, String> missing = new LinkedHashMap<>();
    for (Model.Equipment each : is.model().details().equipment()) {
      String wanted = is.equipment().getOrDefault(each.id(), "");
      List<String> path = List.of(EQUIPMENT, each.id());
      Optional<String> there = yaml.written(path);
      boolean wasRight = wanted.equals(was.equipment().getOrDefault(each.id(), ""));
      boolean fitted = wanted.equals(fitted(is, each.id()));
      if (there.isPresent() && !(wasRight && says(there.get(), wanted))) {
        change(path, there.get(), wanted, wasRight, fitted);
      } else if (there.isEmpty() && !fitted && !wanted.isEmpty()) {
        missing.put(each.id(), wanted);
      }
    }
    add(missing);
  }

  private void change(
      List<String> path, String there, String wanted, boolean wasRight, boolean fitted)
      throws Unchangeable {
    if (fitted || wanted.isEmpty()) {
      boolean untouched =
          wasRight && is.built() == was.built() && is.model().id().equals(was.model().id());
      yaml = untouched ? yaml : yaml.without(path);
    } else {
      yaml = yaml.replaced(path, YamlScalar.like(there, wanted, true));
    }
  }

  private static boolean says(String written, String choice) {
    return written.replaceAll("[\"']", "").equals(choice);
  }

  private void add(Map<String, String> missing) throws Unchangeable {
    List<String> left = new ArrayList<>(missing.keySet());
    if (!left.isEmpty() && yaml.written(List.of(EQUIPMENT)).isEmpty()) {
      StringBuilder block = new StringBuilder();
      missing.forEach(
          (id, choice) ->
              block
                  .append(block.isEmpty() ? "{" : ", ")
                  .append(YamlScalar.word(id))
                  .append(": ")
                  .append(YamlScalar.word(choice)));
      yaml = yaml.added(EQUIPMENT, block.append('}').toString(), before(EQUIPMENT));
      return;
    }
    for (String id : left) {
      yaml = yaml.addedTo(EQUIPMENT, YamlScalar.word(id), YamlScalar.word(missing.get(id)));
    }
  }
}
