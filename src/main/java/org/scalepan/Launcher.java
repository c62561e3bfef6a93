package org.scalepan;

/**
 * What Java starts. It is compiled for Java 8, so that an older Java says which one is needed, where it would otherwise fail with an error
 * about class file versions. It refers to the service by name only, because a reference would be resolved too early.
 */
public final class Launcher {
    private static final int NEEDED = 17;
    private static final int TOO_OLD = 5;

    private Launcher() {}

    public static void main(String[] arguments) throws Exception {
        String version = System.getProperty("java.specification.version");
        if (isTooOld(version)) {
            System.err.println("Scalepan needs Java " + NEEDED + " or newer; this is Java " + version + " ("
                    + System.getProperty("java.home") + "); not started");
            System.exit(TOO_OLD);
        }
        Class.forName("org.scalepan.Scalepan").getMethod("main", String[].class).invoke(null, (Object) arguments);
    }

    /** By {@code java.specification.version}, which is 1.8 for Java 8 and 11 for Java 11. */
    static boolean isTooOld(String version) {
        String[] parts = version.split("\\.");
        String major = parts[0].equals("1") && parts.length > 1 ? parts[1] : parts[0];
        return major.matches("[0-9]{1,4}") && Integer.parseInt(major) < NEEDED;
    }
}
