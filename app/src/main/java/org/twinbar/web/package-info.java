/**
 * The workspace in a browser on this machine: three doors, studies, specimens, reports.
 *
 * <p>A page is put together on the server from what {@code study} and {@code report} give; it works
 * without script, and script only adds to it. Nothing here calculates. It knows neither the store
 * nor the command line.
 *
 * <p>The server listens on the loopback address alone. Each request must name that address as its
 * host, and each one that changes something must come from a page of ours, so that a page from
 * elsewhere that is open in the same browser can do nothing here. Pages take style and script from
 * files of their own, which lets the content security policy forbid all other.
 *
 * <p>A phone at the rig has a server of its own, which is started only when somebody at the desk
 * asks for it, on one address of the local network, with the rig's pages and no others. It knows
 * phones by a cookie that a short-lived code from the desk buys; they are forgotten when it stops.
 * What is entered on a phone waits there until it has arrived, in order and once each. A service
 * worker needs a secure address, which a machine at home has not: over the local network the page
 * must stay open while the connection is gone.
 *
 * <p>Turned down: an application in the browser that asks for data and draws pages by itself (two
 * programs that must agree on every word); sessions and accounts (one person at one machine); a
 * certificate of our own for phones (each would have to be told to trust it); opening the desk's
 * server to the network with a check on each page (one that is forgotten opens everything); and a
 * token in each form (the headers that browsers send say the same and can't be forgotten).
 */
@NullMarked
package org.twinbar.web;

import org.jspecify.annotations.NullMarked;
