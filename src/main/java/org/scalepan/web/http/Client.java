package org.scalepan.web.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Who asks, as far as the service need know: enough to tell one client from another while it is being answered. Nothing of it is kept or
 * logged.
 *
 * @param address of version 4, or the network of one of version 6, because whoever has one address there has 2^64 (RFC 6177)
 */
public record Client(String address) {
    private static final int NETWORK_BYTES = 8;
    private static final int LONGEST = 64;
    private static final Pattern WITH_PORT = Pattern.compile("([^:]+|\\[.*]):\\d+");

    /** As the connection tells, or a proxy in a header. */
    public static Client at(String address) {
        String bare = address.strip();
        if (WITH_PORT.matcher(bare).matches()) {
            bare = bare.substring(0, bare.lastIndexOf(':'));
        }
        bare = bare.replaceAll("[\\[\\]]", "");
        bare = bare.substring(0, Math.min(bare.length(), LONGEST));
        return new Client(bare.indexOf(':') < 0 ? bare : network(bare));
    }

    /**
     * The last of those that a proxy names: each proxy adds whom it heard at the end, and what stands before that the client may have
     * written.
     */
    static Client lastOf(List<String> header) {
        String all = header.get(header.size() - 1);
        return at(all.substring(all.lastIndexOf(',') + 1));
    }

    private static String network(String address) {
        try {
            // With a colon in it this is never looked up as a name.
            byte[] bytes = InetAddress.getByName(address).getAddress();
            return bytes.length < 2 * NETWORK_BYTES
                    ? address
                    : InetAddress.getByAddress(Arrays.copyOf(Arrays.copyOf(bytes, NETWORK_BYTES), bytes.length))
                            .getHostAddress();
        } catch (UnknownHostException e) {
            return address;
        }
    }
}
