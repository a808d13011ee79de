package haftline.stock;

import haftline.measure.Checks;

/**
 * Air in which wood is kept.
 *
 * @param key catalogue key
 * @param name where and when
 * @param temperatureC degrees Celsius
 * @param humidityPercent relative humidity, percent
 * @param source whose figures they are
 */
public record Climate(
        String key, String name, double temperatureC, double humidityPercent, Source source)
        implements Keyed {
    public Climate {
        Checks.named("key", key);
        Checks.within("temperature_c", temperatureC, -1, 60);
        Checks.within("humidity_percent", humidityPercent, 1, 99);
    }

    /**
     * Moisture that wood comes to there, Wood Handbook Equation 4-5.
     *
     * @return percent
     */
    double woodMoisturePercent() {
        return Moisture.emcPercent(temperatureC, humidityPercent);
    }
}
