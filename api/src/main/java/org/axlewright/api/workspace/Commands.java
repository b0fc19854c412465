package org.axlewright.api.workspace;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;
import org.axlewright.api.database.OwnerDatabase;
import org.axlewright.api.database.StartRefused;
import org.axlewright.api.workspace.Register.Entry;
import org.axlewright.api.workspace.Register.Issued;
import org.axlewright.api.workspace.Register.Workspace;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.convert.DurationStyle;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.dao.DataAccessException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/**
 * The commands of the packaged jar. They work on the database of the service's own settings, whether it runs or not. Status 0: done; 1: the
 * database or what is in it stands against it; 2: not a command.
 */
@Command(
        name = "java -jar axlewright-service.jar",
        description = {"Without a command the service starts; options such as --server.port=8081 are its settings.", ""
        },
        footer = {
            "",
            "The database is that of the service: AXLEWRIGHT_DATA or SPRING_DATASOURCE_URL, with its user and password.",
            "Status: 0 done, 1 failed, 2 not understood."
        },
        subcommands = {Commands.Workspaces.class, Commands.TokenCommands.class, CommandLine.HelpCommand.class},
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class)
public final class Commands {

    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,59}");
    private static final Duration LONGEST = Duration.ofDays(3660);

    @Spec
    @Nullable
    CommandSpec spec;

    private Commands() {}

    /** Whether these arguments of the jar are a command; the service itself takes settings only. */
    public static boolean isMeant(String... arguments) {
        return arguments.length > 0
                && (!arguments[0].startsWith("-")
                        || List.of("-h", "--help", "-V", "--version").contains(arguments[0]));
    }

    /** Carries a command out and returns the status to exit with. */
    public static int run(String... arguments) {
        CommandLine line = new CommandLine(new Commands());
        line.setExecutionExceptionHandler((failure, command, result) -> {
            PrintWriter err = command.getErr();
            if (failure instanceof StartRefused refused) {
                err.println(refused.getMessage());
                err.println(refused.action());
            } else if (failure instanceof DataAccessException away) {
                err.println("The database does not answer as it should: "
                        + away.getMostSpecificCause().getMessage());
            } else {
                throw failure;
            }
            return CommandLine.ExitCode.SOFTWARE;
        });
        return line.execute(arguments);
    }

    /** Works on the register of the service's database. */
    private static int withRegister(ToIntFunction<Register> work) {
        try (ConfigurableApplicationContext settings = settings();
                OwnerDatabase database = OwnerDatabase.open(settings.getEnvironment())) {
            return work.applyAsInt(new Register(database.client()));
        }
    }

    /** The settings of the service and nothing else of it. */
    private static ConfigurableApplicationContext settings() {
        return new SpringApplicationBuilder(Settings.class)
                .web(WebApplicationType.NONE)
                .bannerMode(Banner.Mode.OFF)
                .logStartupInfo(false)
                .properties("logging.threshold.console=off") // standard output is for what was asked
                .run();
    }

    private static final class Settings {}

    @Command(
            name = "workspace",
            description = "Workspaces: who shares saved setups.",
            synopsisSubcommandLabel = "COMMAND",
            mixinStandardHelpOptions = true)
    static final class Workspaces {

        @Spec
        @Nullable
        CommandSpec spec;

        @Command(name = "create", description = "Make a workspace.", mixinStandardHelpOptions = true)
        int create(
                @Parameters(paramLabel = "NAME", description = "Letters, digits, space and . _ -, at most 60.")
                        String name) {
            CommandLine line = line(spec);
            if (!NAME.matcher(name).matches()) {
                throw new ParameterException(
                        line,
                        "A name is 1 to 60 letters, digits, spaces and . _ - and begins with a letter or digit: '"
                                + name + "' is none");
            }
            return withRegister(register -> {
                if (!register.createWorkspace(name)) {
                    line.getErr().println("There is a workspace '" + name + "' already.");
                    return CommandLine.ExitCode.SOFTWARE;
                }
                line.getErr().println("Made the workspace '" + name + "'. Nobody can open it yet: make a token.");
                return CommandLine.ExitCode.OK;
            });
        }

        @Command(name = "list", description = "List the workspaces.", mixinStandardHelpOptions = true)
        int list() {
            CommandLine line = line(spec);
            return withRegister(register -> {
                line.getOut().printf("%-24s %-12s %s%n", "created", "open tokens", "name");
                for (Workspace workspace : register.workspaces()) {
                    line.getOut()
                            .printf(
                                    "%-24s %-12d %s%n",
                                    shown(workspace.createdAt()), workspace.openTokens(), workspace.name());
                }
                return CommandLine.ExitCode.OK;
            });
        }
    }

    @Command(
            name = "token",
            description = "Tokens: what opens a workspace to a program.",
            synopsisSubcommandLabel = "COMMAND",
            mixinStandardHelpOptions = true)
    static final class TokenCommands {

        @Spec
        @Nullable
        CommandSpec spec;

        @Command(
                name = "create",
                description =
                        "Make a token. It goes to standard output once; only its hash is kept. What else there is to say goes to standard error.",
                mixinStandardHelpOptions = true)
        int create(
                @Option(
                                names = "--workspace",
                                required = true,
                                paramLabel = "NAME",
                                description = "The workspace that it opens; 'local' is there from the start.")
                        String workspace,
                @Option(
                                names = "--scope",
                                defaultValue = "read",
                                converter = ScopeConverter.class,
                                description = "read or write; read when left out.")
                        Scope scope,
                @Option(
                                names = "--expires",
                                defaultValue = "90d",
                                paramLabel = "TIME",
                                converter = TimeConverter.class,
                                description =
                                        "How long it is good for, as 12h or 90d; 90d when left out, 3660d at most.")
                        Duration expires) {
            CommandLine line = line(spec);
            return withRegister(register -> {
                Instant end = Instant.now().plus(expires).truncatedTo(ChronoUnit.SECONDS);
                Issued issued = register.issue(workspace, scope, end).orElse(null);
                if (issued == null) {
                    line.getErr()
                            .println("There is no workspace '" + workspace + "'; there are: "
                                    + String.join(
                                            ", ",
                                            register.workspaces().stream()
                                                    .map(Workspace::name)
                                                    .toList())
                                    + ". Make it with: workspace create");
                    return CommandLine.ExitCode.SOFTWARE;
                }
                line.getOut().println(issued.token().text());
                line.getErr()
                        .println("Token " + issued.id() + " of '" + workspace + "', scope " + scope + ", expires "
                                + shown(end) + ". It is not shown again.");
                return CommandLine.ExitCode.OK;
            });
        }

        @Command(name = "list", description = "List tokens, newest first.", mixinStandardHelpOptions = true)
        int list(
                @Option(names = "--workspace", paramLabel = "NAME", description = "Only those of this workspace.")
                        @Nullable
                        String workspace) {
            CommandLine line = line(spec);
            return withRegister(register -> {
                String row = "%-36s %-8s %-6s %-20s %-20s %-20s %s%n";
                line.getOut().printf(row, "id", "state", "scope", "created", "expires", "last used", "workspace");
                for (Entry token : register.tokens(workspace)) {
                    line.getOut()
                            .printf(
                                    row,
                                    token.id(),
                                    token.state(),
                                    token.scope(),
                                    shown(token.createdAt()),
                                    shown(token.expiresAt()),
                                    shown(token.lastUsedAt()),
                                    token.workspace());
                }
                return CommandLine.ExitCode.OK;
            });
        }

        @Command(
                name = "revoke",
                description = "Revoke a token. It opens nothing from then on.",
                mixinStandardHelpOptions = true)
        int revoke(@Parameters(paramLabel = "ID", description = "Its id, as token list shows it.") UUID id) {
            CommandLine line = line(spec);
            return withRegister(register -> {
                if (!register.revoke(id)) {
                    line.getErr().println("There is no token " + id + ".");
                    return CommandLine.ExitCode.SOFTWARE;
                }
                line.getErr().println("Token " + id + " is revoked.");
                return CommandLine.ExitCode.OK;
            });
        }
    }

    static final class ScopeConverter implements ITypeConverter<Scope> {
        @Override
        public Scope convert(String value) {
            return List.of(Scope.values()).stream()
                    .filter(scope -> scope.toString().equals(value))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("must be read or write, was '" + value + "'"));
        }
    }

    static final class TimeConverter implements ITypeConverter<Duration> {
        @Override
        public Duration convert(String value) {
            Duration time;
            try {
                time = DurationStyle.detectAndParse(value, ChronoUnit.DAYS);
            } catch (IllegalArgumentException | ArithmeticException notOne) {
                throw new TypeConversionException("must be a time such as 12h or 90d, was '" + value + "'");
            }
            if (time.compareTo(Duration.ofSeconds(1)) < 0 || time.compareTo(LONGEST) > 0) {
                throw new TypeConversionException("must be 1s to " + LONGEST.toDays() + "d, was '" + value + "'");
            }
            return time;
        }
    }

    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Commands.class.getPackage().getImplementationVersion();
            return new String[] {"axlewright " + (version == null ? "unpackaged" : version)};
        }
    }

    private static CommandLine line(@Nullable CommandSpec spec) {
        if (spec == null) {
            throw new IllegalStateException("picocli injects it");
        }
        return spec.commandLine();
    }

    private static String shown(@Nullable Instant time) {
        return time == null ? "never" : time.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
