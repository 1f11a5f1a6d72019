package limberboard.drill.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.Yaml;

/** Writes values as YAML. */
final class WrittenYaml {
  private static final ObjectMapper PLAIN = new ObjectMapper();

  private WrittenYaml() {}

  /** One value, with its keys in their order, one a line; a long text is not broken. */
  static String of(Object value) {
    DumperOptions options = new DumperOptions();
    options.setDefaultFlowStyle(FlowStyle.BLOCK);
    options.setSplitLines(false);
    return new Yaml(options).dump(PLAIN.convertValue(value, Object.class));
  }
}
