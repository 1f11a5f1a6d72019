package limberboard.letters.recognise;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.Passage;

/**
 * How people name the boat that they write of, and boats in passing: by the lists of lines that
 * come with the program, and by recorded letters. Safe for use by several threads.
 */
final class NamingExamples {
  private static final String LIST = "naming.txt";

  private final TextParser parser;
  private final NamingKeys keys;
  private final Map<RecordedLetter, List<Naming>> known = new ConcurrentHashMap<>();
  private final List<Naming> lines;
  private final Map<String, String> nameOfBoat = new HashMap<>();

  /**
   * A boat that is named.
   *
   * @param keys what stands around her name
   * @param own whether the letter is about her
   */
  record Naming(Set<String> keys, boolean own) {
    /** Keeps the keys in little room: thousands of lines share most of them. */
    Naming {
      keys = keys.stream().map(String::intern).collect(Collectors.toUnmodifiableSet());
    }
  }

  /**
   * Reads the lists.
   *
   * @param boats the workspace's boats, which recorded letters name
   */
  NamingExamples(TextParser parser, List<Boat> boats) {
    this.parser = parser;
    boats.forEach(boat -> nameOfBoat.put(boat.id(), boat.name().toLowerCase(Locale.ROOT)));
    NameFinder finder = new NameFinder(Set.copyOf(nameOfBoat.values()));
    keys = new NamingKeys(finder, new BoatNames(finder, parser));
    NameFinder marks = new NameFinder(Set.copyOf(MarkedLine.NAMES.values()));
    NamingKeys ofLine = new NamingKeys(marks, new BoatNames(marks, parser));
    String own = MarkedLine.NAMES.get("own").toLowerCase(Locale.ROOT);
    List<String> lists =
        Stream.concat(WordList.lines(LIST).stream(), WholeLetters.lines().stream()).toList();
    lines =
        lists.parallelStream()
            .map(line -> ofLine.of(read(MarkedLine.of(line))))
            .flatMap(names -> names.entrySet().stream())
            .map(name -> new Naming(name.getValue(), name.getKey().equals(own)))
            .toList();
  }

  private NamingKeys.Read read(MarkedLine line) {
    LetterText nothing = parser.read("", "");
    return new NamingKeys.Read(parser.read(line.subject(), line.text()), nothing, nothing);
  }

  /** The lines of the lists. */
  List<Naming> lines() {
    return lines;
  }

  /** The boats that a recorded letter names. */
  List<Naming> of(RecordedLetter letter) {
    return known.computeIfAbsent(letter, this::namings);
  }

  private List<Naming> namings(RecordedLetter letter) {
    String own = letter.expected().boat().map(id -> nameOfBoat.getOrDefault(id, "")).orElse("");
    return keys.of(read(letter.letter(), parser.recorded(letter))).entrySet().stream()
        .map(each -> new Naming(each.getValue(), each.getKey().equals(own)))
        .toList();
  }

  /** What stands around the names in a letter. */
  Map<String, Set<String>> of(Letter letter, LetterText text) {
    return keys.of(read(letter, text));
  }

  /** What stands around the names in the mail that a letter quotes. */
  Map<String, Set<String>> ofQuoted(Letter letter) {
    String earlier = letter.of(Passage.Kind.QUOTED) + "\n\n" + letter.of(Passage.Kind.FORWARDED);
    LetterText nothing = parser.read("", "");
    return keys.of(
        new NamingKeys.Read(
            parser.read("", earlier.replaceAll("(?m)^[>\\s]+", "")), nothing, nothing));
  }

  private NamingKeys.Read read(Letter letter, LetterText text) {
    return new NamingKeys.Read(
        text,
        parser.read("", letter.of(Passage.Kind.SIGNATURE)),
        parser.read("", letter.head().from().map(Mailbox::name).orElse("")));
  }

  /** How a name is written in a letter: as it is, or otherwise. */
  Optional<String> written(LetterText text, String name) {
    Matcher exact =
        Pattern.compile("\\b" + Pattern.quote(name), Pattern.CASE_INSENSITIVE).matcher(text.text());
    if (exact.find()) {
      return Optional.empty();
    }
    NameFinder finder = new NameFinder(Set.of(name));
    for (int i = 0; i < text.words().size(); i++) {
      Optional<NameFinder.Found> found = finder.at(text, i);
      if (found.isPresent()) {
        return Optional.of(text.written(i, i + found.get().words()));
      }
    }
    return Optional.empty();
  }
}
