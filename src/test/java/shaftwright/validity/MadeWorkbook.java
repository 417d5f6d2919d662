package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.badinput.FileParts;
import shaftwright.cli.Run;
import shaftwright.workbook.FirstVersion;

/**
 * Workbooks that the commands write, one of each kind. Those that are not {@link #always} looked at
 * are when the system property {@code validity.all} is true.
 */
enum MadeWorkbook {
    DEMO_INCH(true) {
        @Override
        void make(Path file) {
            run("new", "--demo", file);
        }
    },
    DEMO_MM(true) {
        @Override
        void make(Path file) {
            run("new", "--demo", "--unit", "mm", file);
        }
    },
    BLANK_INCH(true) {
        @Override
        void make(Path file) {
            run("new", file);
        }
    },
    BLANK_MM(false) {
        @Override
        void make(Path file) {
            run("new", "--unit", "mm", file);
        }
    },
    ONE_SCENARIO(true) {
        @Override
        void make(Path file) {
            run("new", "--scenarios", "1", "--unit", "mm", file);
        }
    },
    MOST_SCENARIOS(true) {
        @Override
        void make(Path file) {
            run("new", "--scenarios", "24", file);
        }
    },
    MOST_SCENARIOS_OF_DEMO(false) {
        @Override
        void make(Path file) {
            run("new", "--scenarios", "24", "--demo", "--unit", "mm", file);
        }
    },
    FILLED_AFTER_CHANGES(true) {
        @Override
        void make(Path file) {
            run(
                    "fill",
                    from(DEMO_INCH, file),
                    "--out",
                    file,
                    "--set",
                    "vehicle_name=  <Two> & \"three\"  ",
                    "--set",
                    "height_left[2]=13 5/8",
                    "--set",
                    "tyre_size[A]=");
        }
    },
    FILLED_AFTER_LOSS(false) {
        @Override
        void make(Path file) {
            run("fill", "--set", "scenario_name[B]=", "--out", file, from(DEMO_MM, file));
        }
    },
    PACKED(true) {
        @Override
        void make(Path file) {
            run("pack", "--out", file, from(BLANK_INCH, file));
        }
    },
    UNPACKED(false) {
        @Override
        void make(Path file) {
            run("pack", "--remove", "--out", file, from(PACKED, file));
        }
    },
    FOREIGN_PACKED(true) {
        @Override
        void make(Path file) {
            foreign(file);
            run("pack", file);
        }
    },
    FOREIGN_WITHOUT_NAMES_PACKED(true) {
        @Override
        void make(Path file) {
            foreign(file);
            FileParts parts = FileParts.of(file);
            parts.replace("xl/workbook.xml", "</sheets>", "</sheets><definedNames/>").write(file);
            run("pack", file);
        }
    },
    COMPARED(true) {
        @Override
        void make(Path file) {
            run("compare", "--out", file, from(DEMO_INCH, file), from(DEMO_MM, file));
        }
    },
    COMPARED_AND_FILLED(false) {
        @Override
        void make(Path file) {
            run("fill", "--out", file, from(COMPARED, file));
        }
    },
    TAKEN_INTO(true) {
        @Override
        void make(Path file) {
            run("take", "--out", file, from(DEMO_MM, file), "B", from(DEMO_INCH, file));
        }
    },
    RENEWED(true) {
        @Override
        void make(Path file) {
            run("renew", "--out", file, FirstVersion.copyTo(file.resolveSibling("older.xlsx")));
        }
    },
    AUTHORS_CLEARED(true) {
        @Override
        void make(Path file) {
            Path signed = from(DEMO_INCH, file);
            FileParts parts = FileParts.of(signed);
            // The last element closes itself, as the tool names no author.
            String core = parts.text("docProps/core.xml");
            String author = "><dc:creator>Somebody</dc:creator></cp:coreProperties>";
            parts.put("docProps/core.xml", core.replaceFirst("/>$", author)).write(signed);
            run("clear-authors", "--out", file, signed);
            assertThat(FileParts.of(file).text("docProps/core.xml")).doesNotContain("Somebody");
        }
    };

    /** Laying one out takes seconds, and many are made from others. */
    private static final Map<MadeWorkbook, byte[]> MADE = new EnumMap<>(MadeWorkbook.class);

    private final boolean always;

    MadeWorkbook(boolean always) {
        this.always = always;
    }

    abstract void make(Path file);

    /** Those to look at in this run. */
    static Stream<MadeWorkbook> chosen() {
        boolean all = Boolean.getBoolean("validity.all");
        return Stream.of(values()).filter(each -> all || each.always);
    }

    /** The file, in a folder. */
    Path in(Path folder) {
        return write(folder.resolve(name().toLowerCase(Locale.ROOT) + ".xlsx"));
    }

    private static Path from(MadeWorkbook other, Path besides) {
        return other.write(
                besides.resolveSibling("from-" + other.name().toLowerCase(Locale.ROOT) + ".xlsx"));
    }

    private Path write(Path file) {
        try {
            byte[] made = MADE.get(this);
            if (made == null) {
                make(file);
                MADE.put(this, Files.readAllBytes(file));
            } else {
                Files.write(file, made);
            }
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void run(Object... command) {
        Run run = Run.of(command);
        assertThat(run.code()).as("%s: %s", List.of(command), run.err()).isZero();
    }

    /** A workbook of a builder's own, saved by another library. */
    private static void foreign(Path file) {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            workbook.createSheet("Own").createRow(0).createCell(0).setCellValue(25.4);
            workbook.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
