# The exact two-sided normal tolerance factor, for row 123-two of checks.csv: by integration, and its confidence by
# simulation beside that of the figure which the e-Handbook prints.
factor <- function(n, share, confidence) {
  half <- function(x) uniroot(function(r) pnorm(x + r) - pnorm(x - r) - share, c(0, 20), tol = 1e-14)$root
  reached <- function(k) 2 * sqrt(n) * integrate(function(x) sapply(x, function(v)
    dnorm(v * sqrt(n)) * pchisq((n - 1) * half(v)^2 / k^2, n - 1, lower.tail = FALSE)), 0, 8 / sqrt(n),
    rel.tol = 1e-11)$value
  uniroot(function(k) reached(k) - confidence, c(1, 10), tol = 1e-11)$root
}
cat("exact:", format(factor(43, 0.90, 0.99), digits = 10), "\n")
set.seed(1)
m <- rnorm(4e5) / sqrt(43); s <- sqrt(rchisq(4e5, 42) / 42)
for (k in c(2.21732, 2.222825)) cat(k, "holds 90 % with confidence", mean(pnorm(m + k * s) - pnorm(m - k * s) >= 0.9), "\n")
