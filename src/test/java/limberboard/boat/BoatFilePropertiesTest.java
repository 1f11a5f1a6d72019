package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/**
 * Boats' files of any formatting: what is saved is read again, and all the rest stays as it was.
 */
class BoatFilePropertiesTest {
  private static final Library LIBRARY = library();
  private static final List<String> TEXTS =
      List.of(
          "Knot",
          "no",
          "7 of 9",
          "- dash",
          "a: b",
          "x # y",
          "\"quoted\" 'both'",
          "back\\slash",
          "Ängsö 🛶",
          "two\nlines",
          "  led\n\nby blanks",
          "tab\there",
          "[list]",
          "&anchor *alias",
          "%",
          "end:");

  private static Library library() {
    try {
      return new LibraryReader(new WorkspaceFolders(Path.of(""))).read();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** A file in parts: each the lines of one key, or a comment, or a blank line. */
  private record Part(String key, String text) {}

  private static final class Writing {
    private final Random random;
    private final String end;
    private final List<Part> parts = new ArrayList<>();

    Writing(Random random) {
      this.random = random;
      this.end = random.nextBoolean() ? "\n" : "\r\n";
    }

    private String pick(List<String> from) {
      return from.get(random.nextInt(from.size()));
    }

    private String scalar(String text) {
      boolean simple = text.matches("[A-Za-z0-9-]+") && !text.equals("no") && !text.startsWith("-");
      return switch (random.nextInt(3)) {
        case 0 -> simple ? text : quoted(text);
        case 1 -> text.contains("\n") || text.contains("\t") ? quoted(text) : single(text);
        default -> quoted(text);
      };
    }

    private static String single(String text) {
      return "'" + text.replace("'", "''") + "'";
    }

    private static String quoted(String text) {
      return '"'
          + text.replace("\\", "\\\\")
              .replace("\"", "\\\"")
              .replace("\n", "\\n")
              .replace("\t", "\\t")
          + '"';
    }

    private String tail() {
      return switch (random.nextInt(4)) {
            case 0 -> "   # a remark, with: all #kinds";
            case 1 -> " ";
            default -> "";
          }
          + end;
    }

    private void line(String key, String value) {
      parts.add(new Part(key, key + ":" + " ".repeat(1 + random.nextInt(2)) + value + tail()));
    }

    List<Part> of(Boat boat, Map<String, String> chosen) {
      line("name", scalar(boat.name()));
      line("model", scalar(boat.model().id()));
      line("hull", scalar(Integer.toString(boat.hull())));
      line("built", scalar(Integer.toString(boat.built())));
      boat.launched().ifPresent(day -> line("launched", scalar(day.toString())));
      line("use", scalar(boat.use().word()));
      if (boat.water() != Water.SALT || random.nextBoolean()) {
        line("water", scalar(boat.water().word()));
      }
      equipment(chosen);
      boat.season().ifPresent(this::season);
      if (!boat.note().isEmpty()) {
        note(boat.note());
      }
      parts.add(new Part("", "sail-number: 12 # not ours" + end));
      parts.add(new Part("", "x: {a: [1, 2], b: \"c, d\"}" + end));
      Collections.shuffle(parts, random);
      List<Part> all = new ArrayList<>();
      for (Part part : parts) {
        if (random.nextInt(3) == 0) {
          all.add(new Part("", "# " + pick(TEXTS).replace("\n", " ") + end));
        }
        if (random.nextInt(4) == 0) {
          all.add(new Part("", end));
        }
        all.add(part);
      }
      return all;
    }

    private void note(String note) {
      if (note.matches("[A-Za-z].*\n.*") && random.nextBoolean()) {
        StringBuilder lines = new StringBuilder("note: |-" + end);
        note.lines().forEach(each -> lines.append("   ").append(each).append(end));
        parts.add(new Part("note", lines.toString()));
      } else {
        line("note", scalar(note));
      }
    }

    private void season(Season season) {
      String from = quoted(season.from().toString());
      String to = quoted(season.to().toString());
      if (random.nextBoolean()) {
        line("season", "{ from: " + from + " ,to: " + to + "}");
      } else {
        parts.add(
            new Part("season", "season:" + end + "   to: " + to + end + "   from: " + from + end));
      }
    }

    private void equipment(Map<String, String> chosen) {
      if (chosen.isEmpty()) {
        return;
      }
      boolean block = random.nextBoolean();
      StringBuilder text = new StringBuilder("equipment:" + (block ? end : " {"));
      chosen.forEach(
          (id, choice) ->
              text.append(block ? "    " : "")
                  .append(id)
                  .append(": ")
                  .append(scalar(choice))
                  .append(block ? tail() : ", "));
      parts.add(new Part("equipment", text + (block ? "" : "}" + tail())));
    }
  }

  private static Boat random(Random random, String id) {
    List<Page<Model>> models = LIBRARY.all(Model.class);
    Page<Model> model = models.get(random.nextInt(models.size()));
    int built = model.details().built().from().orElse(2000) + random.nextInt(8);
    Map<String, String> equipment = model.details().usualEquipment(built);
    for (Model.Equipment each : model.details().equipment()) {
      List<Model.Choice> choices = each.choicesFor(built);
      if (!choices.isEmpty() && random.nextInt(3) == 0) {
        equipment.put(each.id(), choices.get(random.nextInt(choices.size())).id());
      }
    }
    return new Boat(
        id,
        TEXTS.get(random.nextInt(TEXTS.size())),
        model,
        1 + random.nextInt(60),
        built,
        random.nextBoolean() ? Optional.of(LocalDate.of(built, 5, 1)) : Optional.empty(),
        Use.values()[random.nextInt(Use.values().length)],
        Water.values()[random.nextInt(Water.values().length)],
        Exposure.USUAL,
        equipment,
        random.nextBoolean()
            ? Optional.of(new Season(MonthDay.of(4, 1 + random.nextInt(20)), MonthDay.of(10, 1)))
            : Optional.empty(),
        random.nextBoolean() ? TEXTS.get(random.nextInt(TEXTS.size())) : "",
        List.of());
  }

  /** Some of one boat's facts and the rest of another's. */
  private static Boat mixed(Random random, Boat one, Boat other) {
    boolean model = random.nextInt(6) == 0;
    boolean built = model || random.nextInt(6) == 0 && one.model().equals(other.model());
    Boat source = built ? other : one;
    Map<String, String> equipment = new LinkedHashMap<>(source.equipment());
    source
        .model()
        .details()
        .equipment()
        .forEach(
            each -> {
              List<Model.Choice> choices = each.choicesFor(source.built());
              if (!choices.isEmpty() && random.nextInt(5) == 0) {
                equipment.put(each.id(), choices.get(random.nextInt(choices.size())).id());
              }
            });
    return new Boat(
        one.id(),
        random.nextInt(3) == 0 ? other.name() : one.name(),
        source.model(),
        random.nextInt(4) == 0 ? other.hull() : one.hull(),
        source.built(),
        random.nextInt(4) == 0 ? other.launched() : one.launched(),
        random.nextInt(4) == 0 ? other.use() : one.use(),
        random.nextInt(4) == 0 ? other.water() : one.water(),
        one.exposure(),
        equipment,
        random.nextInt(4) == 0 ? other.season() : one.season(),
        random.nextInt(4) == 0 ? other.note() : one.note(),
        one.log());
  }

  @Property(tries = 400, seed = "1881", edgeCases = EdgeCasesMode.NONE)
  void whatIsSavedIsReadAgainAndAllTheRestStaysToTheLetter(@ForAll @LongRange(min = 0) long seed)
      throws IOException {
    Random random = new Random(seed);
    Boat was = random(random, "knot");
    Boat wanted = mixed(random, was, random(random, "knot"));
    Map<String, String> chosen = new LinkedHashMap<>(was.equipment());
    was.model()
        .details()
        .usualEquipment(was.built())
        .forEach(
            (id, usual) -> {
              if (random.nextInt(3) > 0) {
                chosen.remove(id, usual);
              }
            });
    List<Part> parts = new Writing(random).of(was, chosen);
    StringBuilder text = new StringBuilder(random.nextInt(5) == 0 ? "\uFEFF" : "");
    parts.forEach(part -> text.append(part.text()));
    try (FileSystem disk = Jimfs.newFileSystem(Configuration.unix())) {
      WorkspaceFolders folders = new WorkspaceFolders(disk.getPath("/work"));
      Path file = folders.boats().resolve("knot/boat.yaml");
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
      assertThat(read(text.toString())).as(text.toString()).isEqualTo(was);
      assertThat(new BoatWriter(folders).save(LIBRARY, was, wanted))
          .as(text.toString())
          .isEqualTo(new BoatWriter.Saved(wanted));
      String after = Files.readString(file);
      assertThat(read(after)).isEqualTo(wanted);
      assertThat(after.startsWith("\uFEFF")).isEqualTo(text.charAt(0) == '\uFEFF');
      int at = 0;
      for (Part part : parts) {
        if (stays(part.key(), was, wanted)) {
          int found = after.indexOf(part.text(), at);
          assertThat(found).as(part.text() + "\nin\n" + after).isGreaterThanOrEqualTo(at);
          at = found + part.text().length();
        }
      }
    }
  }

  private static boolean stays(String key, Boat was, Boat is) {
    return switch (key) {
      case "" -> true;
      case "name" -> was.name().equals(is.name());
      case "model" -> was.model().id().equals(is.model().id());
      case "hull" -> was.hull() == is.hull();
      case "built" -> was.built() == is.built();
      case "launched" -> was.launched().equals(is.launched());
      case "use" -> was.use() == is.use();
      case "water" -> was.water() == is.water();
      case "season" -> was.season().equals(is.season());
      case "note" -> was.note().equals(is.note());
      default ->
          was.equipment().equals(is.equipment())
              && was.built() == is.built()
              && was.model().id().equals(is.model().id());
    };
  }

  @Property(tries = 300, seed = "1882", edgeCases = EdgeCasesMode.NONE)
  void aNewBoatIsReadAsItWasEntered(@ForAll @LongRange(min = 0) long seed) throws IOException {
    Boat boat = random(new Random(seed), "knot");
    try (FileSystem disk = Jimfs.newFileSystem(Configuration.unix())) {
      WorkspaceFolders folders = new WorkspaceFolders(disk.getPath("/work"));
      assertThat(new BoatWriter(folders).create(LIBRARY, boat))
          .isEqualTo(new BoatWriter.Saved(boat));
      Path file = folders.boats().resolve("knot/boat.yaml");
      assertThat(read(Files.readString(file))).isEqualTo(boat);
    }
  }

  private static Boat read(String text) {
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return new BoatText(LIBRARY, new HeaderBinder())
        .read("knot", "boat.yaml", plain.replace("\r\n", "\n"))
        .boat()
        .orElseThrow(() -> new AssertionError("no boat in\n" + text));
  }
}
