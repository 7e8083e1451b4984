using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Litterfall.Store.Migrations
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Choices",
                columns: table => new
                {
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Choices", x => x.Key);
                }
            );

            migrationBuilder.CreateTable(
                name: "Designs",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Head = table.Column<int>(type: "INTEGER", nullable: false),
                    CreatedTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    ChangedTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    IsAway = table.Column<bool>(type: "INTEGER", nullable: false),
                    Verdict = table.Column<string>(type: "TEXT", nullable: true),
                    Stamp = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Designs", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Entries",
                columns: table => new
                {
                    Id = table
                        .Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Entries", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Versions",
                columns: table => new
                {
                    DesignId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Parent = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Engine = table.Column<string>(type: "TEXT", nullable: false),
                    Library = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Versions", x => new { x.DesignId, x.Number });
                    table.ForeignKey(
                        name: "FK_Versions_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateIndex(
                name: "IX_Designs_ChangedTicks",
                table: "Designs",
                column: "ChangedTicks"
            );

            migrationBuilder.CreateIndex(name: "IX_Entries_Key", table: "Entries", column: "Key");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "Choices");

            migrationBuilder.DropTable(name: "Entries");

            migrationBuilder.DropTable(name: "Versions");

            migrationBuilder.DropTable(name: "Designs");
        }
    }
}
