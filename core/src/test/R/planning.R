# Outside values for org.twinbar.planning: chances of a verdict, n of no change, cautious scatter.
# Run with: Rscript core/src/test/R/planning.R   (R 4.2.2, stats only)
cat(R.version.string, "\n")
# 1. Pilot: s * sqrt(nu / qchisq(0.2, nu))
x <- c(30.1, 31.4, 29.2, 32.0, 30.6)
s <- sd(x); nu <- length(x) - 1
cat("pilot-mean", format(mean(x), digits = 15), "\n")
cat("pilot-scatter", format(s, digits = 15), "\n")
cat("pilot-cautious", format(s * sqrt(nu / qchisq(0.2, nu)), digits = 15), "\n")
# 2. Level: noncentral t
clears <- function(n, margin, sd, p) {
  k <- qt(0.95, n - 1, ncp = sqrt(n) * qnorm(p)) / sqrt(n)
  pt(sqrt(n) * k, n - 1, ncp = sqrt(n) * margin / sd, lower.tail = FALSE)
}
cat("clears-6", format(clears(6, 10, 2, 0.9), digits = 12), "\n")
cat("clears-10", format(clears(10, 6, 2, 0.9), digits = 12), "\n")
# 3. No change: the 95 % interval within the limits; integral over the chi distribution of s
alike <- function(n, low, high, sd, alpha = 0.025) {
  nu <- 2 * n - 2; se <- sd * sqrt(2 / n); t <- qt(1 - alpha, nu)
  f <- function(u) { s <- sqrt(u / nu)
    pmax(0, pnorm(high / se - t * s) - pnorm(low / se + t * s)) * dchisq(u, nu) }
  integrate(f, 0, Inf, rel.tol = 1e-12, subdivisions = 2000)$value
}
cat("alike-difference-10", format(alike(10, -1.5, 1.5, 1), digits = 12), "\n")
cat("alike-ratio-12", format(alike(12, log(0.9), log(1.1), 0.06), digits = 12), "\n")
n <- 3; while (alike(n, log(0.9), log(1.1), 0.06) < 0.8) n <- n + 1
cat("alike-ratio-enough", n, "\n")
