package org.scalepan.web.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Identity of a client, only used to tell clients apart while requests are in progress. It is neither stored nor logged.
 *
 * @param address of version 4, or the network of one of version 6, because a subscriber has a whole /64 (RFC 6177)
 */
public record Client(String address) {
    private static final int NETWORK_BYTES = 8;
    private static final int LONGEST = 64;
    private static final Pattern WITH_PORT = Pattern.compile("([^:]+|\\[.*]):\\d+");

    /** From the address of the connection's peer, or as a proxy names it in a header. */
    public static Client at(String address) {
        String bare = address.strip();
        if (WITH_PORT.matcher(bare).matches()) {
            bare = bare.substring(0, bare.lastIndexOf(':'));
        }
        bare = bare.replaceAll("[\\[\\]]", "");
        bare = bare.substring(0, Math.min(bare.length(), LONGEST));
        return new Client(bare.indexOf(':') < 0 ? bare : network(bare));
    }

    /** The last address in a proxy's header: each proxy appends its own peer, and anything before that may be forged by the client. */
    static Client lastOf(List<String> header) {
        String all = header.get(header.size() - 1);
        return at(all.substring(all.lastIndexOf(',') + 1));
    }

    private static String network(String address) {
        try {
            // Contains a colon, so it is never resolved as a host name.
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
