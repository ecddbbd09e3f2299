# Weibull limits by simulated pivots, and the normal ones, for rows weibull-… and normal-level-… of checks.csv.
x <- c(31.2, 35.6, 38.9, 40.1, 42.3, 43.8, 45.0, 46.2, 48.7, 51.5)
fit <- function(x) {
  l <- log(x)
  m <- uniroot(function(m) { w <- exp(m * (l - max(l))); sum(w * l) / sum(w) - 1 / m - mean(l) }, c(1e-3, 200), tol = 1e-10)$root
  c(m, mean(x^m)^(1 / m))
}
p <- 0.1; w <- log(-log(1 - p)); set.seed(7)
z <- replicate(40000, { f <- fit(rexp(10)); f[1] * (log(f[2]) + w / f[1] - w) })
f <- fit(x)
cat("shape, scale", format(f, digits = 10), "\n")
cat("10 % quantile", format(exp(log(f[2]) + w / f[1]), digits = 8), "limits",
    format(exp(log(f[2]) + w / f[1] - quantile(z, c(0.95, 0.05)) / f[1]), digits = 6), "\n")
k <- qt(c(0.95, 0.05), 9, ncp = qnorm(0.9) * sqrt(10)) / sqrt(10)
cat("normal 10 % quantile", format(mean(x) - qnorm(0.9) * sd(x), digits = 10), "limits",
    format(mean(x) - k * sd(x), digits = 10), "\n")
