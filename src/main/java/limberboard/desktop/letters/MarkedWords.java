package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.boat.Boat;
import limberboard.desktop.letters.LetterArea.Mark;
import limberboard.desktop.look.Palette;
import limberboard.letters.mail.Passage;
import limberboard.letters.recognise.Recognised;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.Suspect;

/** The words of a letter that led to what was recognised, passage by passage. */
final class MarkedWords {
  private static final Pattern QUOTED = Pattern.compile("“([^”]+)”");
  private final Understanding letter;

  MarkedWords(Understanding letter) {
    this.letter = letter;
  }

  /** The words in the text that was recognised; what is urgent is marked last, over the others. */
  private List<Mark> all() {
    Recognition seen = letter.seen();
    List<String> chosen = letter.chosen();
    List<Mark> all = new ArrayList<>();
    for (Suspect suspect : seen.symptoms()) {
      if (chosen.isEmpty() || chosen.contains(suspect.id())) {
        suspect.words().forEach(words -> all.add(mark(words, Palette.MARK)));
        seen.answers()
            .getOrDefault(suspect.id(), List.of())
            .forEach(given -> all.add(mark(given.words(), Palette.MARK)));
      }
    }
    names().forEach(name -> all.addAll(named(seen.text(), name)));
    seen.urgent().ifPresent(urgent -> all.add(mark(urgent.words(), Palette.CAUTION)));
    return all;
  }

  private static Mark mark(Recognition.Words words, Palette colour) {
    return new Mark(words.start(), words.end(), colour);
  }

  /** The boat's name, and how it was written. */
  private List<String> names() {
    List<String> names = new ArrayList<>();
    letter
        .fitting()
        .map(fitting -> fitting.boat())
        .filter(Boat::isEntered)
        .map(Boat::name)
        .ifPresent(names::add);
    letter
        .seen()
        .boat()
        .map(Recognised::why)
        .ifPresent(why -> QUOTED.matcher(why).results().forEach(r -> names.add(r.group(1))));
    return names;
  }

  private static List<Mark> named(String text, String name) {
    List<Mark> found = new ArrayList<>();
    Matcher matcher =
        Pattern.compile("\\b" + Pattern.quote(name.toLowerCase(Locale.ROOT)) + "\\b")
            .matcher(text.toLowerCase(Locale.ROOT));
    while (text.length() == text.toLowerCase(Locale.ROOT).length() && matcher.find()) {
      found.add(new Mark(matcher.start(), matcher.end(), Palette.MARK));
    }
    return found;
  }

  /** For each of the writer's own passages, its marks; empty lists for others. */
  List<List<Mark>> passages() {
    String text = letter.seen().text();
    List<Mark> marks = all();
    List<List<Mark>> each = new ArrayList<>();
    int from = subject().length();
    for (Passage passage : letter.letter().passages()) {
      int at = passage.kind() == Passage.Kind.OWN ? text.indexOf(passage.text(), from) : -1;
      each.add(at < 0 ? List.of() : within(marks, at, at + passage.text().length()));
      from = at < 0 ? from : at + passage.text().length();
    }
    return each;
  }

  /** The marks in the letter's subject, counted from its beginning as it is shown. */
  List<Mark> inSubject(String shown) {
    int at = shown.indexOf(subject());
    return at < 0
        ? List.of()
        : within(all(), 0, subject().length()).stream()
            .map(mark -> new Mark(mark.start() + at, mark.end() + at, mark.colour()))
            .toList();
  }

  private String subject() {
    String text = letter.seen().text();
    int end = text.indexOf("\n\n");
    return end < 0 ? "" : text.substring(0, end);
  }

  private static List<Mark> within(List<Mark> marks, int from, int to) {
    return marks.stream()
        .filter(mark -> mark.start() >= from && mark.end() <= to)
        .map(mark -> new Mark(mark.start() - from, mark.end() - from, mark.colour()))
        .toList();
  }
}
