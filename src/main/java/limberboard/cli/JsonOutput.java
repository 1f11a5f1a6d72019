package limberboard.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.PrintWriter;

/** Prints values as JSON, one line each. */
final class JsonOutput {
  private final PrintWriter out;
  private final ObjectWriter writer =
      JsonMapper.builder().addModule(new Jdk8Module()).build().writer();

  JsonOutput(PrintWriter out) {
    this.out = out;
  }

  /** Prints a record, list or map. */
  void print(Object value) {
    try {
      out.println(writer.writeValueAsString(value));
      out.flush();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("cannot write " + value.getClass() + " as JSON", e);
    }
  }
}
