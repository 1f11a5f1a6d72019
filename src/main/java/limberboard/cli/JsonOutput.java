package limberboard.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.PrintWriter;
import java.util.Locale;
import limberboard.library.file.Controls;

/** Prints values as JSON, one line each. */
final class JsonOutput {
  private final PrintWriter out;
  private final ObjectWriter writer =
      JsonMapper.builder().addModule(new Jdk8Module()).build().writer();

  JsonOutput(PrintWriter out) {
    this.out = out;
  }

  /** The same value with the control characters that JSON allows unescaped escaped as well. */
  private static String escaped(String json) {
    if (json.chars().noneMatch(c -> Controls.is((char) c))) {
      return json;
    }
    StringBuilder text = new StringBuilder();
    json.chars()
        .forEach(
            c ->
                text.append(
                    Controls.is((char) c)
                        ? String.format(Locale.ROOT, "\\u%04x", c)
                        : String.valueOf((char) c)));
    return text.toString();
  }

  /**
   * Prints a record, list or map.
   *
   * @throws Failure when it could not be printed in full
   */
  void print(Object value) {
    try {
      out.println(escaped(writer.writeValueAsString(value)));
      if (out.checkError()) {
        throw new Failure(ExitCode.IO, Terminal.NOT_PRINTED);
      }
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("cannot write " + value.getClass() + " as JSON", e);
    }
  }
}
