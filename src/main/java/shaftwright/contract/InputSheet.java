package shaftwright.contract;

/** Sheets on which numbers are typed, under the names that a new workbook gives them. */
public enum InputSheet {
    MEASURE("Measure"),
    LINKAGE("Linkage"),
    DAMPERS("Dampers"),
    PARTS("Parts"),
    MATING("Mating"),
    SCENARIOS("Scenarios"),
    LEVERS("Levers"),
    STRENGTH("Strength"),
    DOUBT("Doubt"),
    MOCK_UP("Mock-up"),
    AS_BUILT("As built");

    private final String title;

    InputSheet(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
